package etamine.ingredients.ui.internal;

import etamine.base.Subject;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Prompt;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** The list above, the selected ingredient below. */
final class IngredientsBench implements Bench {
    private final Frame frame;
    private final IngredientsModel model;
    private final ListTable<IngredientRow> list;
    private final IngredientPane pane;

    IngredientsBench(Composite parent, Frame frame, IngredientsModel model) {
        this.frame = frame;
        this.model = model;
        SashForm sash = new SashForm(parent, SWT.VERTICAL);
        list = new ListTable<>(sash, "table:ingredients", IngredientRow::id, columns())
                .findable("Find an ingredient")
                .whenEmpty("No ingredients yet.", "Add the first ingredient", this::add)
                .onSelect(selected -> selected())
                .onOpen(row -> focusForm())
                .onDelete(rows -> remove());
        pane = new IngredientPane(sash, this::save);
        sash.setWeights(45, 55);
        refresh();
    }

    private List<Column<IngredientRow>> columns() {
        return List.of(
                Column.words("Ingredient", 5, IngredientRow::name)
                        .withIcon(row -> model.isDoubtful(row.id()) ? "warning" : ""),
                Column.words("Group", 3, IngredientRow::group),
                Column.figures("Written price", 3, IngredientRow::price, Comparator.comparing(IngredientRow::price)),
                Column.words("Storage", 2, IngredientRow::storage),
                Column.words("Allergens", 4, IngredientRow::allergens)
                        .withTone(row -> row.allergensKnown() ? Tone.PLAIN : Tone.WARN),
                Column.figures("Used in", 2, IngredientRow::usesText, Comparator.comparing(IngredientRow::uses)));
    }

    private void selected() {
        Optional<Ingredient> ingredient = list.selected().flatMap(row -> model.find(row.id()));
        ingredient.ifPresentOrElse(found -> pane.show(found, model.problems(found.id())), pane::empty);
        ingredient.flatMap(found -> model.explain(found.id())).ifPresentOrElse(frame::explain, frame::explainNothing);
        frame.actionsChanged();
    }

    private void focusForm() {
        if (list.selected().isPresent()) {
            pane.focusName();
        }
    }

    private void save(String id, UnaryOperator<Ingredient> edit) {
        frame.work("Saving", progress -> model.save(id, edit), this::saved);
    }

    private void saved(Change change) {
        if (change instanceof Change.Refused refused) {
            frame.warn(IngredientsModel.sentences(refused));
        }
        refresh();
    }

    private void add() {
        Prompt.line(frame.window(), "Add an ingredient", "Name", "", IngredientsBench::nameProblem)
                .ifPresent(this::add);
    }

    private static Optional<String> nameProblem(String name) {
        return name.isEmpty() ? Optional.of("Give the ingredient a name.") : Optional.empty();
    }

    private void add(String name) {
        String id = model.nextId(name);
        frame.work("Adding " + name, progress -> model.add(name), change -> {
            saved(change);
            list.select(id);
            selected();
            focusForm();
        });
    }

    private void remove() {
        list.selected()
                .ifPresent(row -> frame.work("Removing " + row.name(), progress -> model.remove(row.id()), change -> {
                    if (change instanceof Change.Done) {
                        frame.say(row.name() + " is removed; undo brings it back.");
                    }
                    saved(change);
                }));
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(
                BenchAction.of("add", "Add ingredient", "add", this::add).onKey(SWT.MOD1 | 'N'),
                BenchAction.of("remove", "Remove", "remove", this::remove)
                        .when(() -> list.selected().isPresent()));
    }

    @Override
    public void refresh() {
        list.setRows(model.rows());
        selected();
    }

    @Override
    public void show(Subject subject) {
        list.select(subject.id());
    }

    @Override
    public void focus() {
        list.setFocus();
    }
}
