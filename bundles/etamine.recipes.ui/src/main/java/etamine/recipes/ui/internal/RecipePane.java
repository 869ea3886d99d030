package etamine.recipes.ui.internal;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.widgets.EditGrid;
import etamine.widgets.EditGrid.GridColumn;
import etamine.widgets.FormPane;
import etamine.widgets.Palette;
import etamine.widgets.SavedField;
import etamine.widgets.Tone;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** One recipe to write, each part saved when it is left. */
final class RecipePane implements RecipePage {
    private static final int NOTE_LINES = 3;

    private final Desk desk;
    private final RecipesModel model;
    private final FormPane form;
    private final Label problems;
    private final Map<Field, SavedField> fields = new EnumMap<>(Field.class);
    private final Text name;
    private final Combo kind;
    private final EditGrid uses;
    private final EditGrid makes;
    private final EditGrid steps;
    private String shown = "";

    RecipePane(Composite parent, Desk desk) {
        this.desk = desk;
        this.model = desk.model();
        form = new FormPane(parent);
        problems = form.wide(cell -> new Label(cell, SWT.WRAP));
        problems.setForeground(Palette.of(form).text(Tone.WARN));
        name = field(Field.NAME);
        kind = form.field("Kind", "field:kind", false, cell -> new Combo(cell, SWT.READ_ONLY));
        kind.setItems(Stream.of(Kind.values()).map(KindText::of).toArray(String[]::new));
        kind.addListener(SWT.Selection, event -> kindPicked());
        form.heading("Uses");
        uses = form.wide(this::usesGrid).onRow(this::explain);
        form.heading("Makes");
        makes = form.wide(this::makesGrid);
        Stream.of(Field.PORTION, Field.KEEPS, Field.TESTED).forEach(this::field);
        form.heading("Steps");
        steps = form.wide(this::stepsGrid);
        form.heading("On the menu");
        Stream.of(Field.MENU_PRICE, Field.TAX, Field.Q_FACTOR).forEach(this::field);
        form.heading("Notes");
        Text notes = form.area(Field.NOTES.label(), "field:notes", NOTE_LINES);
        fields.put(Field.NOTES, saved(Field.NOTES, notes));
        form.remark(Allergens.CAUTION);
        form.setVisible(false);
    }

    private EditGrid usesGrid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("amount, item, preparation", 12).completing(model::complete),
                GridColumn.figure("AP", 3),
                GridColumn.figure("cost", 2));
        return new EditGrid(
                cell,
                "grid:uses",
                columns,
                (about, row, cells) -> attempt(about, model.tables().use(row, cells)));
    }

    private EditGrid makesGrid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("item", 8).completing(model.words()::complete),
                GridColumn.entry("quantity", 4),
                GridColumn.entry("credited at", 4));
        return new EditGrid(
                cell,
                "grid:makes",
                columns,
                (about, row, cells) -> attempt(about, model.tables().make(row, cells)));
    }

    private EditGrid stepsGrid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("what to do; times in minutes", 8),
                GridColumn.entry("hands", 2),
                GridColumn.entry("waits", 2),
                GridColumn.entry("equipment", 3),
                GridColumn.entry("after", 2));
        return new EditGrid(
                cell, "grid:steps", columns, (about, row, cells) -> attempt(about, TableText.step(row, cells)));
    }

    private Text field(Field field) {
        Text text = form.text(
                field.label(), "field:" + field.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        text.setMessage(field.hint());
        fields.put(field, saved(field, text));
        return text;
    }

    private SavedField saved(Field field, Text text) {
        return new SavedField(form, text, (about, typed) -> attempt(about, FieldText.read(field, typed)));
    }

    private Optional<String> attempt(String about, Attempt attempt) {
        if (attempt instanceof Attempt.Edit understood) {
            desk.edit(about, understood.edit());
            return Optional.empty();
        }
        return Optional.of(((Attempt.Bad) attempt).sentence());
    }

    private void kindPicked() {
        Kind picked = KindText.read(kind.getText());
        desk.edit(shown, recipe -> recipe.withKind(picked));
    }

    @Override
    public Control control() {
        return form;
    }

    @Override
    public void show(Optional<Recipe> recipe) {
        recipe.ifPresentOrElse(this::show, () -> form.setVisible(false));
    }

    private void explain(int line) {
        model.find(shown)
                .filter(recipe -> line < recipe.uses().size())
                .map(recipe -> desk.story().line(recipe, line))
                .ifPresent(desk.frame()::explain);
    }

    private void show(Recipe recipe) {
        shown = recipe.id();
        List<String> sentences = model.problems(recipe);
        fields.forEach((field, saved) -> saved.show(recipe.id(), FieldText.of(recipe, field)));
        kind.setText(KindText.of(recipe.kind()));
        uses.show(recipe.id(), model.uses(recipe));
        makes.show(recipe.id(), model.tables().makes(recipe));
        steps.show(recipe.id(), TableText.steps(recipe));
        problems.setText(String.join("\n", sentences));
        problems.setVisible(!sentences.isEmpty());
        ((GridData) problems.getLayoutData()).exclude = sentences.isEmpty();
        form.setVisible(true);
        form.reflow();
    }

    @Override
    public void focus() {
        uses.setFocus();
    }
}
