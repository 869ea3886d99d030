package etamine.ingredients.ui.internal;

import etamine.base.Subject;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.PickList;
import etamine.widgets.Prompt;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The list above, the selected ingredient in pages below. */
final class IngredientsBench implements Bench {
    private static final String NONE = "No ingredients yet.";
    private static final String START = "Start with 120 common ingredients";
    private static final String ADD = "Add the first ingredient";
    private static final String ALL = "Show everything";

    private final Frame frame;
    private final IngredientsModel model;
    private final MergeModel merges;
    private final Combo filter;
    private final ListTable<IngredientRow> list;
    private final IngredientPane pane;
    private boolean startersMissing;

    IngredientsBench(Composite parent, Frame frame, Known known) {
        this.frame = frame;
        this.model = new IngredientsModel(known);
        this.merges = new MergeModel(known);
        SashForm sash = new SashForm(parent, SWT.VERTICAL);
        Composite upper = new Composite(sash, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        upper.setLayout(layout);
        Label caption = new Label(upper, SWT.NONE);
        caption.setText("Show");
        filter = Spoken.id(PickList.in(upper), "field:ingredient-filter");
        Spoken.label(filter, caption);
        filter.setItems(RowFilter.labels());
        filter.select(0);
        filter.addListener(SWT.Selection, event -> refresh());
        list = new ListTable<>(upper, "table:ingredients", IngredientRow::id, columns())
                .findable("Find an ingredient")
                .whenEmpty(NONE, START, this::start)
                .whenEmpty(NONE, ADD, this::add)
                .whenEmpty(NONE, ALL, this::showAll)
                .onSelect(selected -> selected())
                .onOpen(row -> opened(row))
                .onDelete(rows -> remove());
        list.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        pane = new IngredientPane(sash, frame, model, new Saving(this::save));
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
        Optional<IngredientRow> row = list.selected();
        row.ifPresentOrElse(this::show, pane::empty);
        row.flatMap(found -> model.explain(found.id())).ifPresentOrElse(frame::explain, frame::explainNothing);
        frame.actionsChanged();
    }

    private void show(IngredientRow row) {
        model.find(row.id()).ifPresentOrElse(pane::show, () -> pane.showMade(row));
    }

    private void opened(IngredientRow row) {
        if (row.made()) {
            model.maker(row.id()).ifPresent(recipe -> frame.go(new Subject("recipe", recipe.id())));
        } else {
            focusForm();
        }
    }

    private void showAll() {
        filter.select(0);
        refresh();
        list.setFocus();
    }

    private void start() {
        frame.work("Adding common ingredients", progress -> model.addStarters(), added -> {
            frame.say(added + " common ingredients are added; undo takes them away again.");
            refresh();
        });
    }

    private void merge(boolean fromSelected) {
        String first = fromSelected
                ? list.selected()
                        .filter(row -> !row.made())
                        .map(IngredientRow::id)
                        .orElse("")
                : "";
        frame.work(
                "Looking for what is there twice",
                progress -> merges.pairs(),
                pairs -> new MergeDialog(frame, merges, pairs, first).ask(this::merge));
    }

    private void merge(String goes, String stays) {
        frame.work("Merging", progress -> merges.merge(goes, stays), change -> {
            if (change instanceof Change.Done) {
                frame.say("Merged; undo takes all of it back.");
            }
            saved(change);
            list.select(stays);
            selected();
        });
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
            pane.focusAfterName();
        });
    }

    private void remove() {
        list.selected()
                .filter(row -> !row.made())
                .ifPresent(row -> frame.work("Removing " + row.name(), progress -> model.remove(row.id()), change -> {
                    if (change instanceof Change.Done) {
                        frame.say(row.name() + " is removed; undo brings it back.");
                    }
                    saved(change);
                }));
    }

    @Override
    public List<BenchAction> actions() {
        BooleanSupplier listed =
                () -> list.selected().filter(row -> !row.made()).isPresent();
        return List.of(
                BenchAction.of("add", "Add ingredient", "add", this::add).onKey(SWT.MOD1 | 'N'),
                BenchAction.of("remove", "Remove", "remove", this::remove).when(listed),
                BenchAction.of("duplicates", "Duplicates", "", () -> merge(false)),
                BenchAction.of("merge", "Merge", "", () -> merge(true)).when(listed),
                BenchAction.of("starter", "Common ingredients", "", this::start).when(() -> startersMissing));
    }

    @Override
    public void refresh() {
        List<IngredientRow> rows = model.rows();
        startersMissing = model.startersMissing() > 0;
        if (rows.isEmpty()) {
            list.whenEmpty(NONE).offerOnly(START, ADD);
        } else {
            list.whenEmpty("Of what is in the book nothing is so.").offerOnly(ALL);
        }
        list.setRows(RowFilter.values()[Math.max(0, filter.getSelectionIndex())].of(rows));
        selected();
    }

    @Override
    public void show(Subject subject) {
        filter.select(0);
        refresh();
        list.select(subject.id());
    }

    @Override
    public void focus() {
        list.setFocus();
    }
}
