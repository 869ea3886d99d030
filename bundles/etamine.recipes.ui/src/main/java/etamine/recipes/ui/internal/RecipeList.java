package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.Icons;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/** The recipes, found as somebody types and narrowed by a filter that opens below. */
final class RecipeList {
    private static final String WRITE = "Write the first recipe";
    private static final String CLEAR = "Clear words and filter";

    private final RecipesModel model;
    private final Frame frame;
    private final Composite pane;
    private final Text find;
    private final Button narrow;
    private final FilterFields filter;
    private final ListTable<RecipeRow> table;
    private Consumer<Optional<Recipe>> onSelect = recipe -> {};
    private boolean filling;

    RecipeList(Composite parent, RecipesModel model, Frame frame, Runnable add) {
        this.model = model;
        this.frame = frame;
        pane = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        pane.setLayout(layout);
        find = Spoken.id(new Text(pane, SWT.SEARCH | SWT.ICON_CANCEL | SWT.SINGLE | SWT.BORDER), "table:recipes:find");
        find.setMessage("Find in names, items, steps");
        Spoken.name(find, "Find in names, items and steps");
        find.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        narrow = Spoken.id(new Button(pane, SWT.TOGGLE), "recipes:filter");
        narrow.setImage(Icons.small(pane, "filter"));
        narrow.setToolTipText("Narrow the list by kind, station, allergen, cost, drafts, archive");
        Spoken.name(narrow, "Filter");
        filter = new FilterFields(pane, this::narrowed);
        table = new ListTable<>(pane, "table:recipes", RecipeRow::id, columns())
                .whenEmpty(RecipeFilter.NONE.nothing(), WRITE, add)
                .whenEmpty(RecipeFilter.NONE.nothing(), CLEAR, this::clear)
                .onSelect(rows -> tell());
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        find.addListener(SWT.Modify, event -> narrowed());
        find.addListener(SWT.KeyDown, this::leaveFinder);
        narrow.addListener(SWT.Selection, event -> openFilter(narrow.getSelection()));
        table.control().addListener(SWT.KeyDown, this::typeToFind);
        openFilter(false);
    }

    private List<Column<RecipeRow>> columns() {
        Comparator<RecipeRow> byTries = Comparator.comparing(RecipeRow::tested);
        return List.of(
                Column.words("Recipe", 8, RecipeList::named).withIcon(this::icon),
                Column.figures("Tried", 0, RecipeRow::triesText, byTries));
    }

    /** Its kind, by which the list is sorted, or that it wants a look; a column for that alone would cut the names. */
    private String icon(RecipeRow row) {
        return model.isDoubtful(row.id()) ? "warning" : row.icon();
    }

    private static String named(RecipeRow row) {
        return row.found().isEmpty() ? row.name() : row.name() + " \u2013 " + row.found();
    }

    Composite control() {
        return pane;
    }

    ListTable<RecipeRow> table() {
        return table;
    }

    void onSelect(Consumer<Optional<Recipe>> listener) {
        onSelect = listener;
    }

    Optional<Recipe> selected() {
        return table.selected().flatMap(row -> model.find(row.id()));
    }

    /** Reads the list again, keeping what is selected, and tells of it anew; a long one is read beside the window. */
    void refresh() {
        if (model.isShort()) {
            fill();
            tell();
            return;
        }
        tell();
        RecipeFilter wanted = filter.with(find.getText());
        frame.work("Reading the recipes", progress -> model.list(wanted), read -> {
            if (wanted.equals(filter.with(find.getText()))) {
                changed(() -> put(wanted, read));
            }
        });
    }

    /** The same at once, telling only when another recipe is selected than before. */
    private void narrowed() {
        changed(this::fill);
    }

    private void changed(Runnable change) {
        Optional<String> before = selected().map(Recipe::id);
        change.run();
        if (!selected().map(Recipe::id).equals(before)) {
            tell();
        }
    }

    private void fill() {
        RecipeFilter wanted = filter.with(find.getText());
        put(wanted, model.list(wanted));
    }

    private void put(RecipeFilter wanted, RecipesModel.Listing read) {
        filling = true;
        filter.stations(read.stations());
        table.whenEmpty(wanted.nothing()).offerOnly(wanted.isOpen() ? WRITE : CLEAR);
        table.setRows(read.rows());
        filling = false;
        int narrowing = wanted.narrowing();
        narrow.setText(narrowing == 0 ? "" : Integer.toString(narrowing));
        pane.layout();
    }

    private void tell() {
        if (!filling) {
            onSelect.accept(selected());
        }
    }

    /** Selects a recipe, clearing what hides it. */
    void select(String id) {
        boolean hidden = table.shown().stream().noneMatch(row -> row.id().equals(id));
        if (hidden && model.find(id).isPresent()) {
            filter.clear(model.find(id)
                    .filter(recipe -> recipe.standing().archived())
                    .isPresent());
            find.setText("");
            fill();
        }
        table.select(id);
    }

    private void clear() {
        filter.clear(false);
        find.setText("");
        narrowed();
        table.setFocus();
    }

    private void openFilter(boolean open) {
        narrow.setSelection(open);
        filter.control().setVisible(open);
        ((GridData) filter.control().getLayoutData()).exclude = !open;
        pane.layout();
        if (open) {
            filter.control().setFocus();
        }
    }

    private void leaveFinder(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN || event.character == SWT.CR) {
            table.setFocus();
            event.doit = false;
        } else if (event.character == SWT.ESC) {
            find.setText("");
        }
    }

    private void typeToFind(Event event) {
        boolean letter = event.character > ' ' && event.character != SWT.DEL && (event.stateMask & ~SWT.SHIFT) == 0;
        if (letter) {
            find.setFocus();
            find.setText(String.valueOf(event.character));
            find.setSelection(1);
            event.doit = false;
        }
    }
}
