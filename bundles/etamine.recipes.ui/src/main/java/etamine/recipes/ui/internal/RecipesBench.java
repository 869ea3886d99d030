package etamine.recipes.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Change;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Prompt;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The recipes by kind on the left, the selected one to write and to scale on the right. */
final class RecipesBench implements Bench {
    private final Frame frame;
    private final RecipesModel model;
    private final RecipeStory story;
    private final ListTable<RecipeRow> list;
    private final RecipePane pane;
    private final ScalePane scale;

    RecipesBench(Composite parent, Frame frame, Kitchenware ware) {
        this.frame = frame;
        this.model = new RecipesModel(ware);
        this.story = new RecipeStory(ware, model);
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        list = new ListTable<>(sash, "table:recipes", RecipeRow::id, columns())
                .findable("Find a recipe")
                .whenEmpty("No recipes yet.", "Write the first recipe", this::add)
                .onSelect(selected -> selected())
                .onOpen(row -> focusForm())
                .onDelete(rows -> remove());
        Composite right = new Composite(sash, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        right.setLayout(layout);
        scale = new ScalePane(right, model);
        scale.control().setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        pane = new RecipePane(right, model, this::save, this::explainLine);
        for (Control child : right.getChildren()) {
            if (child != scale.control()) {
                child.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
            }
        }
        sash.setWeights(36, 64);
        refresh();
    }

    private List<Column<RecipeRow>> columns() {
        Comparator<RecipeRow> byKind =
                Comparator.comparing(RecipeRow::kind).thenComparing(RecipeRow::name, String.CASE_INSENSITIVE_ORDER);
        return List.of(
                Column.words("Recipe", 7, RecipeRow::name).withIcon(row -> model.isDoubtful(row.id()) ? "warning" : ""),
                Column.words("Kind", 3, RecipeRow::kindText).sorted(byKind));
    }

    private Optional<Recipe> recipe() {
        return list.selected().flatMap(row -> model.find(row.id()));
    }

    private void selected() {
        Optional<Recipe> recipe = recipe();
        recipe.ifPresentOrElse(pane::show, pane::empty);
        scale.control().setVisible(recipe.isPresent());
        scale.show(recipe.map(Recipe::id).orElse(""));
        recipe.map(this::explanation).ifPresentOrElse(frame::explain, frame::explainNothing);
        frame.actionsChanged();
    }

    /** Of the line that is being written, else of the whole recipe. */
    private Explanation explanation(Recipe recipe) {
        return pane.line().isPresent() && pane.line().getAsInt() < recipe.uses().size()
                ? story.line(recipe, pane.line().getAsInt())
                : story.recipe(recipe);
    }

    private void explainLine(int line) {
        recipe().filter(recipe -> line < recipe.uses().size())
                .map(recipe -> story.line(recipe, line))
                .ifPresent(frame::explain);
    }

    private void focusForm() {
        if (recipe().isPresent()) {
            pane.focusLines();
        }
    }

    private void save(String id, UnaryOperator<Recipe> edit) {
        frame.work("Saving", progress -> model.save(id, edit), this::saved);
    }

    private void saved(Change change) {
        if (change instanceof Change.Refused refused) {
            frame.warn(RecipesModel.sentences(refused));
        }
        refresh();
    }

    private void added(Change change) {
        saved(change);
        if (change instanceof Change.Done done) {
            list.select(done.id());
            selected();
            focusForm();
        }
    }

    private void add() {
        new NewRecipe(frame.window())
                .ask()
                .ifPresent(wish -> frame.work(
                        "Adding " + wish.name(), progress -> model.add(wish.name(), wish.kind()), this::added));
    }

    private void copy() {
        recipe().ifPresent(recipe -> Prompt.line(
                        frame.window(),
                        "Copy " + recipe.name(),
                        "Name of the copy",
                        recipe.name() + ", new version",
                        NewRecipe::nameProblem)
                .ifPresent(name -> frame.work(
                        "Copying " + recipe.name(), progress -> model.copy(recipe.id(), name), this::added)));
    }

    private void remove() {
        recipe().ifPresent(recipe ->
                frame.work("Removing " + recipe.name(), progress -> model.remove(recipe.id()), change -> {
                    if (change instanceof Change.Done) {
                        frame.say(recipe.name() + " is removed; undo brings it back.");
                    }
                    saved(change);
                }));
    }

    private void costs() {
        recipe().ifPresent(recipe -> frame.go(new Subject("cost", recipe.id())));
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(
                BenchAction.of("add", "Add recipe", "add", this::add).onKey(SWT.MOD1 | 'N'),
                BenchAction.of("copy", "Copy", "copy", this::copy).when(() -> recipe().isPresent()),
                BenchAction.of("scale", "Scale", "scale", scale::focus)
                        .onKey(SWT.MOD1 | 'L')
                        .when(() -> recipe().isPresent()),
                BenchAction.of("cost", "Cost", "costing", this::costs)
                        .when(() -> recipe().isPresent() && model.hasCosts()),
                BenchAction.of("remove", "Remove", "remove", this::remove).when(() -> recipe().isPresent()));
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
