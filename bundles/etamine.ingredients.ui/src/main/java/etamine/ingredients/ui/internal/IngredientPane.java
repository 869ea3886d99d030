package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.kitchen.item.Allergens;
import etamine.widgets.EditGrid;
import etamine.widgets.FormPane;
import etamine.widgets.Palette;
import etamine.widgets.SavedField;
import etamine.widgets.Tone;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Everything about one ingredient, each part saved when it is left. */
final class IngredientPane {
    private final FormPane form;
    private final Label problems;
    private final Map<Field, SavedField> fields = new EnumMap<>(Field.class);
    private final Button known;
    private final EditGrid measures;
    private final EditGrid preparations;
    private final BiConsumer<String, UnaryOperator<Ingredient>> save;
    private Text name;
    private String shown = "";

    IngredientPane(Composite parent, BiConsumer<String, UnaryOperator<Ingredient>> save) {
        this.save = save;
        form = new FormPane(parent);
        problems = form.wide(cell -> new Label(cell, SWT.WRAP));
        problems.setForeground(Palette.of(form).text(Tone.WARN));
        name = field(Field.NAME);
        field(Field.GROUP);
        field(Field.PRICE).setMessage("2.10 / kg");
        field(Field.COUNT_IN).setMessage("kg");
        field(Field.STORAGE).setMessage("chilled");
        field(Field.KEEPS).setMessage("10");
        form.heading("Measures");
        measures = form.wide(cell -> new EditGrid(
                cell,
                "grid:measures",
                List.of(EditGrid.GridColumn.entry("so much", 6), EditGrid.GridColumn.entry("is so much", 6)),
                (about, row, cells) -> attempt(about, TableText.measure(row, cells))));
        form.heading("Preparations");
        preparations = form.wide(cell -> new EditGrid(
                cell,
                "grid:preparations",
                List.of(
                        EditGrid.GridColumn.entry("prepared", 5),
                        EditGrid.GridColumn.entry("yield, % by weight", 3),
                        EditGrid.GridColumn.entry("measures of its own", 5),
                        EditGrid.GridColumn.entry("where the yield comes from", 5)),
                (about, row, cells) -> attempt(about, TableText.preparation(row, cells))));
        form.heading("Allergens");
        field(Field.CONTAINS);
        field(Field.MAY_CONTAIN);
        known = form.check("Both lists are established", "field:allergens-known");
        known.addListener(SWT.Selection, event -> save.accept(shown, FieldText.known(known.getSelection())));
        form.remark(Allergens.CAUTION);
        empty();
    }

    private Text field(Field field) {
        String id = "field:" + field.name().toLowerCase(Locale.ROOT).replace('_', '-');
        Text text = form.text(field.label(), id);
        fields.put(field, new SavedField(form, text, (about, typed) -> attempt(about, FieldText.read(field, typed))));
        return text;
    }

    private Optional<String> attempt(String about, Attempt attempt) {
        if (attempt instanceof Attempt.Edit understood) {
            save.accept(about, understood.edit());
            return Optional.empty();
        }
        return Optional.of(((Attempt.Bad) attempt).sentence());
    }

    void show(Ingredient ingredient, List<String> sentences) {
        shown = ingredient.id();
        fields.forEach((field, saved) -> saved.show(ingredient.id(), FieldText.of(ingredient, field)));
        known.setSelection(ingredient.item().allergens().known());
        measures.show(ingredient.id(), TableText.measures(ingredient.item()));
        preparations.show(ingredient.id(), TableText.preparations(ingredient));
        problems.setText(String.join("\n", sentences));
        problems.setVisible(!sentences.isEmpty());
        ((GridData) problems.getLayoutData()).exclude = sentences.isEmpty();
        form.setVisible(true);
        form.reflow();
    }

    /** Nothing is selected. */
    void empty() {
        form.setVisible(false);
    }

    void focusName() {
        name.setFocus();
        name.selectAll();
    }
}
