package etamine.recipes.ui.internal;

import etamine.base.Subject;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Change;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Pages;
import etamine.widgets.Prompt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The recipes on the left, the pages about the selected one on the right. */
final class RecipesBench implements Bench {
    private final Frame frame;
    private final RecipesModel model;
    private final Desk desk;
    private final RecipeList list;
    private final Pages pages;
    private final Paperwork paperwork;
    private final Map<String, RecipePage> built = new LinkedHashMap<>();

    RecipesBench(Composite parent, Frame frame, Kitchenware ware) {
        this(parent, frame, ware, new Paperwork());
    }

    RecipesBench(Composite parent, Frame frame, Kitchenware ware, Paperwork paperwork) {
        this.frame = frame;
        this.paperwork = paperwork;
        this.model = new RecipesModel(ware);
        this.desk = new Desk(ware, model, new RecipeStory(ware, model), frame, this::changed);
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        list = new RecipeList(sash, model, frame, this::add);
        list.table().onOpen(row -> work("write")).onDelete(rows -> remove());
        pages = new Pages(sash);
        page("write", "Write", WritePage::new);
        page("scale", "Scale", ScalePage::new);
        page("yield", "Yield", RiverPane::new);
        page("allergens", "Allergens", AllergenPane::new);
        page("tests", "Tests", TestsPage::new);
        page("history", "History", HistoryPage::new);
        pages.onShow(id -> turned())
                .focusing(id -> page().filter(page -> recipe().isPresent()).ifPresent(RecipePage::focus));
        list.onSelect(recipe -> selected());
        sash.setWeights(34, 66);
        refresh();
        frame.work("Reckoning the costs", progress -> model.reckon(), costed -> selected());
    }

    private void page(String id, String name, BiFunction<Composite, Desk, RecipePage> make) {
        pages.page(id, name, parent -> build(id, parent, make));
    }

    /** A page lies in a surface of its own, so that it can hide while no recipe is selected. */
    private Control build(String id, Composite parent, BiFunction<Composite, Desk, RecipePage> make) {
        Composite surface = new Composite(parent, SWT.NONE);
        surface.setLayout(new FillLayout());
        RecipePage page = make.apply(surface, desk);
        built.put(id, page);
        page.show(recipe());
        return surface;
    }

    private Optional<Recipe> recipe() {
        return list.selected();
    }

    private void selected() {
        Optional<Recipe> recipe = recipe();
        page().ifPresent(page -> page.show(recipe));
        recipe.map(desk.story()::recipe).ifPresentOrElse(frame::explain, frame::explainNothing);
        frame.actionsChanged();
    }

    private Optional<RecipePage> page() {
        return Optional.ofNullable(built.get(pages.shown()));
    }

    private void turned() {
        page().ifPresent(page -> page.show(recipe()));
    }

    private void work(String id) {
        if (recipe().isPresent()) {
            pages.show(id);
            page().ifPresent(RecipePage::focus);
            pages.getDisplay().asyncExec(this::focusOnceLaidOut);
        }
    }

    /** A page that has just come up has no room yet, and what has no room cannot have the keyboard. */
    private void focusOnceLaidOut() {
        if (!pages.isDisposed() && pages.isVisible() && !pages.hasKeyboard()) {
            page().filter(page -> recipe().isPresent()).ifPresent(RecipePage::focus);
        }
    }

    private void changed(Change change) {
        if (change instanceof Change.Refused refused) {
            frame.warn(RecipesModel.sentences(refused));
        }
        refresh();
    }

    private void added(Change change) {
        changed(change);
        if (change instanceof Change.Done done) {
            list.select(done.id());
            selected();
            work("write");
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
                    changed(change);
                }));
    }

    private void archive() {
        recipe().ifPresent(recipe -> {
            boolean away = !recipe.standing().archived();
            desk.work(
                    (away ? "Archiving " : "Taking out of the archive ") + recipe.name(),
                    () -> model.archive(recipe.id(), away));
        });
    }

    private void costs() {
        recipe().ifPresent(recipe -> frame.go(new Subject("cost", recipe.id())));
    }

    private String archiveLabel() {
        return recipe().filter(recipe -> recipe.standing().archived()).isPresent() ? "Take out of archive" : "Archive";
    }

    @Override
    public List<BenchAction> actions() {
        List<BenchAction> actions = new ArrayList<>(List.of(
                BenchAction.of("add", "Add recipe", "add", this::add).onKey(SWT.MOD1 | 'N'),
                BenchAction.of("copy", "Copy", "copy", this::copy).when(() -> recipe().isPresent()),
                BenchAction.of("scale", "Scale", "scale", () -> work("scale"))
                        .onKey(SWT.MOD1 | 'L')
                        .when(() -> recipe().isPresent()),
                BenchAction.of("cost", "Cost", "costing", this::costs)
                        .when(() -> recipe().isPresent() && model.hasCosts()),
                BenchAction.of("archive", archiveLabel(), "archive", this::archive)
                        .when(() -> recipe().isPresent()),
                BenchAction.of("remove", "Remove", "remove", this::remove).when(() -> recipe().isPresent())));
        actions.addAll(paperwork.actions(frame, this::recipe));
        return actions;
    }

    @Override
    public void refresh() {
        list.refresh();
    }

    @Override
    public void show(Subject subject) {
        list.select(subject.id());
    }

    @Override
    public void focus() {
        list.table().setFocus();
    }
}
