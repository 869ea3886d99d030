package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Recipe;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** How often a recipe was made, what was weighed then, and what that says of its yields. */
final class TestsPage implements RecipePage {
    private final Desk desk;
    private final TestsModel model;
    private final Composite page;
    private final Label standing;
    private final ListTable<TestRow> tests;
    private final ListTable<YieldRow> yields;
    private Optional<Recipe> recipe = Optional.empty();

    TestsPage(Composite parent, Desk desk) {
        this.desk = desk;
        this.model = new TestsModel(desk.ware().past().trials(), desk.model());
        page = new Composite(parent, SWT.NONE);
        page.setLayout(new GridLayout());
        standing = new Label(page, SWT.WRAP);
        standing.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        Spoken.id(standing, "tests:standing");
        buttons();
        tests = new ListTable<>(page, "table:tests", TestRow::key, testColumns())
                .whenEmpty(
                        "Weigh what goes in and what comes out once, and the yields stand on more than a guess.",
                        "Record the first test",
                        this::record)
                .onDelete(rows -> forget());
        tests.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        Label heading = new Label(page, SWT.NONE);
        heading.setText("What the tests say of one batch");
        heading.setFont(Fonts.bold(page));
        yields = new ListTable<>(page, "table:yields", YieldRow::item, yieldColumns());
        GridData low = new GridData(SWT.FILL, SWT.FILL, true, false);
        low.heightHint = 150;
        yields.setLayoutData(low);
    }

    private void buttons() {
        Composite bar = new Composite(page, SWT.NONE);
        RowLayout layout = new RowLayout();
        layout.marginLeft = 0;
        bar.setLayout(layout);
        button(bar, "tests:tried", "Made again with the same result", this::tried);
        button(bar, "tests:record", "Record a test", this::record);
        button(bar, "tests:accept", "Take the mean as working yield", this::accept);
        button(bar, "tests:forget", "Take out", this::forget);
    }

    private static void button(Composite bar, String id, String label, Runnable run) {
        Button button = Spoken.id(new Button(bar, SWT.PUSH), id);
        button.setText(label);
        button.addListener(SWT.Selection, event -> run.run());
    }

    private static List<Column<TestRow>> testColumns() {
        Comparator<TestRow> byDate = Comparator.comparing(TestRow::date).thenComparing(TestRow::place);
        return List.of(
                Column.words("Date", 3, (TestRow row) -> row.date().toString()).sorted(byDate),
                Column.words("By", 2, TestRow::by),
                Column.figures("In", 2, TestRow::in, byDate),
                Column.words("Out, and its share", 6, TestRow::out),
                Column.words("Working yield", 2, TestRow::standing).withIcon(row -> row.accepted() ? "good" : ""),
                Column.words("Note", 3, TestRow::note));
    }

    private static List<Column<YieldRow>> yieldColumns() {
        Comparator<YieldRow> byName = Comparator.comparing(YieldRow::name);
        return List.of(
                Column.words("Made", 4, YieldRow::name),
                Column.figures("Written", 2, YieldRow::written, byName),
                Column.figures("Mean of tests", 2, YieldRow::mean, byName),
                Column.figures("Spread", 2, YieldRow::spread, byName),
                Column.figures("Tests", 1, YieldRow::tests, byName),
                Column.figures("A batch would give", 3, YieldRow::working, byName));
    }

    private void tried() {
        recipe.ifPresent(now -> desk.work(
                "Counting a try of " + now.name(), () -> model.trials().tried(now.id())));
    }

    private void record() {
        recipe.ifPresent(now -> new RecordTest(
                        desk.frame().window(), now, desk.model(), desk.frame().day())
                .ask()
                .ifPresent(test -> record(now, test)));
    }

    private void record(Recipe now, BatchTest test) {
        desk.work("Recording a test of " + now.name(), () -> model.trials().record(now.id(), test));
    }

    private void accept() {
        List<Integer> chosen = tests.selection().size() > 1
                ? tests.selection().stream().map(TestRow::place).toList()
                : List.of();
        recipe.filter(now -> !now.standing().tests().isEmpty())
                .ifPresent(now -> desk.work(
                        "Taking the mean of the tests", () -> model.trials().accept(now.id(), chosen)));
    }

    private void forget() {
        Optional<TestRow> row = tests.selected();
        recipe.filter(now -> row.isPresent())
                .ifPresent(now -> desk.work(
                        "Taking a test out",
                        () -> model.trials().forget(now.id(), row.get().place())));
    }

    @Override
    public Composite control() {
        return page;
    }

    @Override
    public void show(Optional<Recipe> selected) {
        recipe = selected;
        page.setVisible(selected.isPresent());
        standing.setText(selected.map(
                        now -> new Checked(now.id(), List.of(), model.trials().trust(now), "").standing())
                .orElse(""));
        tests.setRows(selected.map(model::tests).orElseGet(List::of));
        yields.setRows(selected.map(model::yields).orElseGet(List::of));
        page.layout();
    }

    @Override
    public void focus() {
        tests.setFocus();
    }
}
