package etamine.recipes.ui.internal;

import etamine.kitchen.item.Allergens;
import etamine.measures.Unit;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks the little that a new ingredient or preparation needs so that the line that names it is understood. */
final class AddItem {
    private final Shell parent;
    private final NewItem start;
    private final Map<String, Control> fields = new LinkedHashMap<>();
    private Optional<NewItem> answer = Optional.empty();

    AddItem(Shell parent, NewItem start) {
        this.parent = parent;
        this.start = start;
    }

    Optional<NewItem> ask() {
        boolean prepared = start.missing().item().isPresent();
        new FormDialog(parent, prepared ? "Add a preparation" : "Add an ingredient", this::fill)
                .button("Add")
                .check(() -> filled().problem())
                .onAccept(() -> answer = Optional.of(filled()))
                .ask();
        return answer;
    }

    private void fill(FormPane form) {
        if (start.missing().item().isEmpty()) {
            text(form, "name", "Name", start.name());
            fields.put("counted", counted(form));
            text(form, "price", "Price, if known", "").setMessage("2.10 / kg");
            text(form, "allergens", "Allergens, if known", "").setMessage(AllergenEntry.EXAMPLE);
        }
        if (!start.preparation().isEmpty()) {
            text(form, "preparation", "Prepared", start.preparation());
            text(form, "yield", "What is left of its weight, %", "").setMessage("74");
        }
        Optional<Unit> unit = start.weighable();
        unit.ifPresent(each -> text(form, "weighs", "1 " + each.symbol() + " weighs, if known", "")
                .setMessage("150 g"));
        if (start.missing().item().isEmpty()) {
            form.remark("Left empty, its allergens are unknown until somebody writes them. " + Allergens.CAUTION);
        }
    }

    private Combo counted(FormPane form) {
        Combo combo = form.pick("Counted in", "field:counted", false);
        combo.setItems(NewItem.COUNTED.toArray(String[]::new));
        combo.setText(start.countIn());
        return combo;
    }

    private Text text(FormPane form, String id, String label, String value) {
        Text text = form.text(label, "field:new-" + id);
        text.setText(value);
        fields.put(id, text);
        return text;
    }

    private NewItem filled() {
        return new NewItem(
                start.missing(),
                value("name", start.name()),
                fields.get("counted") instanceof Combo combo ? combo.getText() : start.countIn(),
                value("price", ""),
                value("preparation", start.preparation()),
                value("yield", ""),
                value("weighs", ""),
                value("allergens", ""));
    }

    private String value(String id, String otherwise) {
        return fields.get(id) instanceof Text text ? text.getText() : otherwise;
    }
}
