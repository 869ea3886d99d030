package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.costing.Days;
import etamine.costing.Statement;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import etamine.widgets.TimeChart;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Ideal against actual: the statement's steps, food cost over weeks, and each ingredient's variance by money. */
final class StatementPage implements CostPage {
    private final Frame frame;
    private final StatementModel model;
    private final PaperRack papers;
    private final Composite body;
    private final PeriodBar period;
    private final Label sentence;
    private final Label notes;
    private final ListTable<StatementModel.Step> steps;
    private final TimeChart course;
    private final ListTable<StatementModel.Week> weeks;
    private final ListTable<Statement.Variance> variances;
    private Optional<StatementModel.Found> found = Optional.empty();
    private int asked;

    StatementPage(Composite parent, Frame frame, StatementModel model, PaperRack papers) {
        this.frame = frame;
        this.model = model;
        this.papers = papers;
        body = new Composite(parent, SWT.NONE);
        body.setLayout(tight());
        period = new PeriodBar(body, model::today, 0, days -> read());
        period.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        sentence = line("statement:sentence");
        sentence.setFont(Fonts.bold(body));
        notes = line("statement:notes");
        notes.setForeground(Palette.of(body).text(Tone.WARN));
        SashForm halves = new SashForm(body, SWT.VERTICAL);
        halves.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        SashForm upper = new SashForm(halves, SWT.HORIZONTAL);
        steps = new ListTable<>(upper, "table:statement", StatementModel.Step::key, stepColumns())
                .whenEmpty(
                        "A statement needs stock, sales and recipes. What is missing stands above; write it down under its station, or"
                                + " start that module under Modules.")
                .onSelect(
                        rows -> found.map(read -> read.statement().explained()).ifPresent(frame::explain));
        Composite charts = new Composite(upper, SWT.NONE);
        charts.setLayout(tight());
        course = new TimeChart(charts);
        course.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        weeks = new ListTable<>(charts, "table:weeks", StatementModel.Week::key, weekColumns());
        GridData low = new GridData(SWT.FILL, SWT.FILL, true, false);
        low.heightHint = 96;
        weeks.setLayoutData(low);
        upper.setWeights(42, 58);
        variances = new ListTable<>(halves, "table:variances", Statement.Variance::item, varianceColumns())
                .findable("Find an ingredient")
                .whenEmpty("No ingredient can be compared: that takes stock, sales and recipes.")
                .onSelect(rows -> rows.stream().findFirst().map(model::explain).ifPresent(frame::explain))
                .onOpen(row -> frame.go(new Subject("item", row.item())));
        halves.setWeights(58, 42);
        period.show(model.start());
    }

    private static GridLayout tight() {
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 2;
        return layout;
    }

    private Label line(String id) {
        Label label = Spoken.id(new Label(body, SWT.WRAP), id);
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return label;
    }

    private static List<Column<StatementModel.Step>> stepColumns() {
        Comparator<StatementModel.Step> asShown = Comparator.comparing(step -> 0);
        return List.of(
                Column.words("Step", 5, StatementModel.Step::name).sorted(asShown),
                Column.<StatementModel.Step>figures("Amount", 2, step -> step.sum() ? "" : step.amount(), asShown),
                Column.<StatementModel.Step>figures("Sum", 2, step -> step.sum() ? step.amount() : "", asShown));
    }

    private static List<Column<StatementModel.Week>> weekColumns() {
        Comparator<StatementModel.Week> asShown = Comparator.comparing(StatementModel.Week::key);
        return List.of(
                Column.words("Week from", 2, StatementModel.Week::days).sorted(asShown),
                Column.figures("Net sales", 1, StatementModel.Week::sales, asShown),
                Column.figures("Ideal", 1, StatementModel.Week::ideal, asShown),
                Column.figures("Actual", 1, StatementModel.Week::actual, asShown));
    }

    private List<Column<Statement.Variance>> varianceColumns() {
        return List.of(
                Column.words("Ingredient", 5, Statement.Variance::name),
                Column.figures("Used", 1, row -> model.quantity(row.used()), Comparator.comparing(row -> row.cost())),
                Column.figures(
                        "Should be",
                        1,
                        row -> model.quantity(row.should()),
                        Comparator.comparing(
                                row -> row.idealCost().orElse(null), Comparator.nullsFirst(Comparator.naturalOrder()))),
                Column.figures(
                        "By use",
                        1,
                        row -> Figures.change(row.byUse()),
                        Comparator.comparing(Statement.Variance::byUse)),
                Column.figures(
                        "By price",
                        1,
                        row -> Figures.change(row.byPrice()),
                        Comparator.comparing(Statement.Variance::byPrice)),
                Column.<Statement.Variance>figures(
                                "Cost more",
                                1,
                                row -> Figures.change(row.money()),
                                Comparator.comparing(Statement.Variance::money))
                        .withTone(row -> row.money().signum() > 0 ? Tone.BAD : Tone.GOOD));
    }

    private void read() {
        Days days = period.days().orElseGet(model::start);
        int turn = ++asked;
        frame.work("Setting ideal against actual", progress -> model.read(days), read -> {
            if (turn == asked) {
                found = Optional.of(read);
                paint(read);
            }
        });
    }

    private void paint(StatementModel.Found read) {
        sentence.setText(model.sentence(read.statement()));
        List<String> texts = read.statement().notes();
        notes.setText(String.join(" ", texts).replace("&", "&&"));
        ((GridData) notes.getLayoutData()).exclude = texts.isEmpty();
        notes.setVisible(!texts.isEmpty());
        steps.setRows(model.steps(read.statement()));
        course.show(model.course(read.weeks()));
        weeks.setRows(model.weeks(read.weeks()));
        variances.setRows(read.statement().variances());
        body.layout();
        frame.explain(read.statement().explained());
        frame.actionsChanged();
    }

    @Override
    public Control control() {
        return body;
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(papers.action(() -> found.map(read -> List.of(
                                new PaperRack.Sheet("statement", rack -> rack.statement(read.statement())),
                                new PaperRack.Sheet("food cost by week", rack -> rack.weeks(read.weeks()))))
                        .orElse(List.of()))
                .when(found::isPresent));
    }

    @Override
    public void refresh() {
        read();
    }

    @Override
    public void focus() {
        variances.setFocus();
    }
}
