package etamine.recipes.ui.internal;

import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Cards;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.PickList;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The allergens and diets of the recipe by the list of the house, or of the whole menu. */
final class AllergenPane implements RecipePage {
    private static final int COLUMNS = 3;

    private final Desk desk;
    private final AllergenModel model;
    private final Composite pane;
    private final Button whole;
    private final Combo list;
    private final Button print;
    private final Composite body;
    private final StackLayout stack = new StackLayout();
    private final ListTable<AllergenLine> lines;
    private final MenuPane menu;
    private Optional<Recipe> recipe = Optional.empty();

    AllergenPane(Composite parent, Desk desk) {
        this.desk = desk;
        this.model = new AllergenModel(desk.ware());
        pane = new Composite(parent, SWT.NONE);
        pane.setLayout(new GridLayout(COLUMNS, false));
        Button one = choice("This recipe", "choice:recipe");
        one.setSelection(true);
        whole = choice("The menu", "choice:menu");
        print = Spoken.id(new Button(pane, SWT.PUSH), "action:print-allergens");
        print.setText("Print the menu");
        print.setLayoutData(new GridData(SWT.END, SWT.CENTER, true, false));
        print.addListener(SWT.Selection, event -> print());
        list = listField();
        Label caution = wide(Tone.WARN);
        caution.setText("⚠ " + Allergens.CAUTION);
        body = new Composite(pane, SWT.NONE);
        body.setLayout(stack);
        body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, COLUMNS, 1));
        lines = new ListTable<>(body, "table:allergens", row -> row.what(), columns())
                .whenEmpty("Select a recipe to see its allergens.")
                .onSelect(rows -> rows.stream().findFirst().ifPresent(this::explain));
        menu = new MenuPane(body, desk, model);
        refresh();
    }

    private Combo listField() {
        Composite row = new Composite(pane, SWT.NONE);
        row.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, COLUMNS, 1));
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        row.setLayout(layout);
        Label caption = new Label(row, SWT.NONE);
        caption.setText("Declared by the list of");
        Combo combo = Spoken.id(PickList.in(row), "field:allergen-list");
        combo.setItems(
                Stream.of(DeclarationList.values()).map(DeclarationList::title).toArray(String[]::new));
        combo.addListener(SWT.Selection, event -> chosen());
        Spoken.label(combo, caption);
        return combo;
    }

    private Button choice(String text, String id) {
        Button button = Spoken.id(new Button(pane, SWT.RADIO), id);
        button.setText(text);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                refresh();
            }
        });
        return button;
    }

    private Label wide(Tone tone) {
        Label label = new Label(pane, SWT.WRAP);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, COLUMNS, 1);
        data.widthHint = 200;
        label.setLayoutData(data);
        label.setForeground(Palette.of(pane).text(tone));
        return label;
    }

    private static List<Column<AllergenLine>> columns() {
        Comparator<AllergenLine> asListed = Comparator.comparingInt(AllergenLine::place);
        return List.of(
                Column.words("Group", 4, AllergenLine::what).sorted(asListed).keeping(18),
                Column.words("This recipe", 4, AllergenLine::state).withTone(AllergenLine::tone),
                Column.words("Why", 8, AllergenLine::why).keeping(26),
                Column.words("To do", 5, AllergenLine::ask).withTone(row -> Tone.WARN));
    }

    @Override
    public Control control() {
        return pane;
    }

    @Override
    public void show(Optional<Recipe> selected) {
        recipe = selected;
        refresh();
    }

    @Override
    public void focus() {
        (whole.getSelection() ? menu.control() : lines).setFocus();
    }

    private void refresh() {
        DeclarationList declared = model.list();
        list.select(declared.ordinal());
        list.setEnabled(desk.ware().others().kitchen().get().isPresent());
        list.setToolTipText(AllergenModel.source(declared));
        print.setEnabled(desk.ware().insight().cards().get().isPresent());
        if (whole.getSelection()) {
            menu.show(declared);
            stack.topControl = menu.control();
        } else {
            lines.setRows(recipe.map(shown -> model.lines(shown, declared)).orElse(List.of()));
            stack.topControl = lines;
        }
        body.layout();
        pane.requestLayout();
    }

    private void chosen() {
        DeclarationList chosen = DeclarationList.values()[list.getSelectionIndex()];
        desk.frame()
                .work(
                        "Changing the list of allergens",
                        progress -> {
                            model.declareBy(chosen);
                            return chosen;
                        },
                        done -> refresh());
    }

    private void explain(AllergenLine line) {
        desk.frame().explain(line.story());
    }

    private void print() {
        Optional<Cards> cards = desk.ware().insight().cards().get();
        cards.ifPresent(writer -> desk.frame().print(writer.allergens(model.list(), writer.usual())));
    }
}
