package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.ingredients.ui.internal.TestText.Place;
import etamine.widgets.Column;
import etamine.widgets.EditGrid;
import etamine.widgets.FormPane;
import etamine.widgets.GridColumn;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The yield tests, what they say together, and which yield the kitchen works with. */
final class TestsPage implements Page {
    private static final int TABLE_HEIGHT = 130;

    private final FormPane form;
    private final IngredientsModel model;
    private final Saving saving;
    private final EditGrid tests;
    private final ListTable<SpreadText.Row> spreads;
    private final Button acceptTest;
    private final Button acceptMean;
    private String shown = "";
    private int at = -1;

    TestsPage(Composite parent, IngredientsModel model, Saving saving) {
        this.model = model;
        this.saving = saving;
        form = new FormPane(parent);
        form.heading("Yield tests");
        tests = form.wide(cell -> new EditGrid(cell, "grid:tests", columns(), this::save));
        tests.onRow(entered -> {
            at = entered;
            enable();
        });
        Composite accepting = form.wide(cell -> new Composite(cell, SWT.NONE));
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 0;
        accepting.setLayout(row);
        acceptTest = button(accepting, "Work with the yield of this test", "button:accept-test", this::acceptTest);
        acceptMean = button(accepting, "Work with the mean of its tests", "button:accept-mean", this::acceptMean);
        form.heading("What they say together");
        spreads = form.wide(cell -> new ListTable<>(cell, "table:spreads", SpreadText.Row::key, spreadColumns())
                .whenEmpty("Write a preparation first, on the page before."));
        ((GridData) spreads.getLayoutData()).heightHint = TABLE_HEIGHT;
        form.remark("Trimming and cooking multiply: the mean of both kinds is the product of their means.");
    }

    private List<GridColumn> columns() {
        return List.of(
                GridColumn.entry("preparation", 5).completing(this::preparations),
                GridColumn.entry("day", 4),
                GridColumn.entry("trim, cooking", 3).completing(typed -> TestText.KINDS),
                GridColumn.entry("went in", 3),
                GridColumn.entry("came out", 3),
                GridColumn.figure("yield", 3),
                GridColumn.entry("who weighed", 3).under(),
                GridColumn.entry("what was special about it", 8).under());
    }

    private static List<Column<SpreadText.Row>> spreadColumns() {
        return List.of(
                Column.words("Preparation", 4, SpreadText.Row::preparation),
                Column.words("Which", 4, SpreadText.Row::what),
                Column.figures("Yield", 2, SpreadText.Row::yield, Comparator.comparing(SpreadText.Row::yield)),
                Column.words("Apart", 4, SpreadText.Row::spread),
                Column.words("From", 6, SpreadText.Row::source));
    }

    private static Button button(Composite parent, String label, String id, Runnable run) {
        Button button = Spoken.id(new Button(parent, SWT.PUSH), id);
        button.setText(label);
        button.addListener(SWT.Selection, event -> run.run());
        return button;
    }

    private List<String> preparations(String typed) {
        return model.find(shown)
                .map(ingredient -> TestText.preparations(ingredient, typed))
                .orElse(List.of());
    }

    private Optional<String> save(String about, int row, List<String> cells) {
        return model.find(about).flatMap(now -> saving.attempt(about, TestText.row(now, row, cells, model.today())));
    }

    private Optional<Place> place() {
        return model.find(shown)
                .map(TestText::places)
                .filter(places -> at >= 0 && at < places.size())
                .map(places -> places.get(at));
    }

    private void acceptTest() {
        place().ifPresent(place -> accept(place.preparation(), List.of(place.test())));
    }

    private void acceptMean() {
        place().ifPresent(place -> model.find(shown).ifPresent(now -> {
            int all = now.yieldOf(place.preparation()).tests().size();
            accept(place.preparation(), IntStream.range(0, all).boxed().toList());
        }));
    }

    private void accept(String preparation, List<Integer> chosen) {
        saving.save().accept(shown, now -> now.accepting(preparation, chosen, model.today(), ""));
    }

    private void enable() {
        boolean test = place().isPresent();
        acceptTest.setEnabled(test);
        acceptMean.setEnabled(test);
    }

    @Override
    public void show(Ingredient ingredient) {
        if (!shown.equals(ingredient.id())) {
            at = TestText.places(ingredient).isEmpty() ? -1 : 0;
        }
        shown = ingredient.id();
        tests.show(ingredient.id(), TestText.rows(ingredient));
        spreads.setRows(SpreadText.rows(ingredient));
        enable();
        form.reflow();
    }

    @Override
    public Control control() {
        return form;
    }
}
