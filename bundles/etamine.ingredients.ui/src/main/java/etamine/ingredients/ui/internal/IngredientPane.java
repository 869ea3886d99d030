package etamine.ingredients.ui.internal;

import etamine.base.Subject;
import etamine.ingredients.Ingredient;
import etamine.kitchen.recipe.Recipe;
import etamine.shell.Frame;
import etamine.widgets.Pages;
import etamine.widgets.Spoken;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Everything about one ingredient in pages, each part saved when it is left; of a made item, where it comes from. */
final class IngredientPane {
    private static final String FACTS = "facts";
    private static final String USES = "uses";

    private final Composite body;
    private final StackLayout stack = new StackLayout();
    private final Frame frame;
    private final IngredientsModel model;
    private final Pages pages;
    private final Map<String, Page> built = new HashMap<>();
    private final Composite made;
    private final Label madeBy;
    private final Button open;
    private Optional<UsesPage> uses = Optional.empty();
    private Optional<Ingredient> shown = Optional.empty();
    private String recipe = "";

    IngredientPane(Composite parent, Frame frame, IngredientsModel model, Saving saving) {
        this.frame = frame;
        this.model = model;
        body = new Composite(parent, SWT.NONE);
        body.setLayout(stack);
        pages = new Pages(body);
        made = new Composite(body, SWT.NONE);
        made.setLayout(new GridLayout());
        madeBy = new Label(made, SWT.WRAP);
        madeBy.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        open = Spoken.id(new Button(made, SWT.PUSH), "button:open-recipe");
        open.setText("Open its recipe");
        open.addListener(SWT.Selection, event -> frame.go(new Subject("recipe", recipe)));
        page(FACTS, "Facts", parentOf -> new FactsPage(parentOf, model, saving));
        page("measures", "Measures and preparations", parentOf -> new MeasuresPage(parentOf, saving));
        page("tests", "Yield tests", parentOf -> new TestsPage(parentOf, model, saving));
        page("allergens", "Allergens and diet", parentOf -> new AllergensPage(parentOf, model, saving));
        pages.page(USES, "Where used", this::usesPage);
        pages.onShow(this::turned);
        empty();
    }

    private void page(String id, String name, Function<Composite, Page> make) {
        pages.page(id, name, parent -> {
            Page page = make.apply(parent);
            built.put(id, page);
            return page.control();
        });
    }

    private Control usesPage(Composite parent) {
        UsesPage page = new UsesPage(parent, frame, model);
        uses = Optional.of(page);
        return page.control();
    }

    private void turned(String id) {
        shown.ifPresent(ingredient -> fill(id, ingredient));
    }

    private void fill(String id, Ingredient ingredient) {
        if (id.equals(USES)) {
            uses.ifPresent(page -> page.show(ingredient.id()));
        }
        Page page = built.get(id);
        if (page != null) {
            page.show(ingredient);
        }
    }

    /** Shows an ingredient on the page that is up; the others follow when they come up. */
    void show(Ingredient ingredient) {
        shown = Optional.of(ingredient);
        built.values().forEach(page -> page.show(ingredient));
        if (pages.shown().equals(USES)) {
            fill(USES, ingredient);
        }
        top(pages);
    }

    /** Shows where a made item comes from. */
    void showMade(IngredientRow row) {
        shown = Optional.empty();
        Optional<Recipe> maker = model.maker(row.id());
        recipe = maker.map(Recipe::id).orElse("");
        madeBy.setText(row.name()
                + maker.map(known -> " is made here by " + known.name()).orElse(" is made here")
                + ". What it holds and how it is counted come from there.");
        open.setVisible(maker.isPresent());
        top(made);
        made.layout();
    }

    /** Nothing is selected. */
    void empty() {
        shown = Optional.empty();
        stack.topControl = null;
        pages.setVisible(false);
        made.setVisible(false);
        body.layout();
    }

    private void top(Control control) {
        stack.topControl = control;
        body.layout();
    }

    void focusName() {
        facts().ifPresent(FactsPage::focusName);
    }

    /** Goes to what comes after the name of an ingredient that has just got one. */
    void focusAfterName() {
        facts().ifPresent(FactsPage::focusGroup);
    }

    private Optional<FactsPage> facts() {
        pages.show(FACTS);
        return Optional.ofNullable(built.get(FACTS))
                .filter(FactsPage.class::isInstance)
                .map(FactsPage.class::cast);
    }
}
