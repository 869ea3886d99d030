package etamine.widgets;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Shows every widget with invented content, to look at in each theme and at each scale. */
public final class WidgetGallery {
    record Row(String id, String name, String group, int grams) {}

    private WidgetGallery() {}

    public static void main(String[] args) {
        Display display = new Display();
        Shell shell = new Shell(display);
        shell.setText("Widgets");
        shell.setLayout(new FillLayout());
        SashForm sash = new SashForm(shell, SWT.HORIZONTAL);
        table(sash);
        form(sash);
        pictures(sash);
        charts(sash);
        shell.setSize(1430, 880);
        shell.open();
        while (!shell.isDisposed()) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
        display.dispose();
    }

    static ListTable<Row> table(Composite parent) {
        ListTable<Row> table = new ListTable<Row>(
                        parent,
                        "table:rows",
                        Row::id,
                        List.of(
                                Column.<Row>words("Ingredient", 4, Row::name)
                                        .withIcon(row -> row.grams() < 60 ? "warning" : ""),
                                Column.words("Group", 2, Row::group),
                                Column.<Row>figures(
                                                "On hand",
                                                2,
                                                row -> row.grams() + " g",
                                                Comparator.comparing(Row::grams))
                                        .withTone(row -> row.grams() < 60 ? Tone.BAD : Tone.PLAIN)))
                .findable("Find an ingredient")
                .whenEmpty(
                        "No ingredients yet. Everything that can lie on a shelf goes here.", "Add the first", () -> {});
        table.setRows(IntStream.range(0, 5000)
                .mapToObj(at -> new Row(
                        "r" + at, "Celeriac, peeled, large dice " + at, at % 3 == 0 ? "Roots" : "Dairy", at * 7))
                .toList());
        return table;
    }

    static FormPane form(Composite parent) {
        FormPane form = new FormPane(parent);
        form.heading("Buying");
        form.text("Name", "field:name").setText("Celeriac");
        form.quantity("Par", "field:par").setText("2 lb 4 oz");
        form.money("Price", "field:price", Currency.getInstance("EUR")).setText("12,50");
        form.day("From", "field:from", () -> LocalDate.of(2026, 11, 24)).setText("2026-13-40");
        form.choice("Group", "field:group", List.of(Choice.of("Roots"), Choice.of("Dairy"), Choice.of("Dry goods")))
                .choose("Dairy");
        form.number("Yield", "field:yield", p -> new NumberField(p, "0", "1", 4))
                .setText("1.4");
        form.check("Allergens known", "field:known");
        form.area("Notes", "field:notes", 4).setText("Scrub, peel thick, keep in water with lemon.");
        form.remark("Unknown allergens are unknown: they are not shown as absent.");
        form.check();
        return form;
    }

    static void pictures(Composite parent) {
        Composite side = new Composite(parent, SWT.NONE);
        side.setLayout(new GridLayout());
        Bars bars = new Bars(side);
        bars.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        bars.show(List.of(
                new Bars.Bar("Cream", 0.55, 0.8, "4.5 l of 8 l", Tone.WARN),
                new Bars.Bar("Celeriac", 0.9, 0.8, "9 kg of 8 kg", Tone.GOOD),
                new Bars.Bar("Butter", 0.1, 0.8, "0.4 kg of 5 kg", Tone.BAD)));
        StackBlocks blocks = new StackBlocks(side);
        blocks.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        blocks.show(List.of(
                new StackBlocks.Block("Guinea fowl breast", 2.84, "2.84 EUR, 48 %"),
                new StackBlocks.Block("Celeriac puree", 0.91, "0.91 EUR, 15 %"),
                new StackBlocks.Block("Cider jus", 1.40, "1.40 EUR, 24 %"),
                new StackBlocks.Block("Garnish", 0.80, "0.80 EUR, 13 %")));
        Spark spark = new Spark(side);
        spark.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        spark.show(
                "Cream",
                List.of(3.9, 4.0, 4.0, 4.2, 4.1, 4.6).stream()
                        .map(v -> new Spark.Mark(v, v + "0 EUR"))
                        .toList());
        icons(side);
    }

    static void charts(Composite parent) {
        Composite side = new Composite(parent, SWT.NONE);
        side.setLayout(new GridLayout());
        ScatterPlot plot = new ScatterPlot(side);
        plot.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        plot.show(menu());
        TimeChart chart = new TimeChart(side);
        chart.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        chart.show(prices());
        ChangeBars bars = new ChangeBars(side);
        bars.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        bars.show(List.of(
                new ChangeBars.Row("On 1 Nov 2026", 5.10, "5.10", true),
                new ChangeBars.Row("Price", 0.42, "+0.42", false),
                new ChangeBars.Row("Yield", -0.10, "\u22120.10", false),
                new ChangeBars.Row("Today", 5.42, "5.42", true)));
        new SliderRow(side, "field:cream", p -> new NumberField(p, "-100", "1000", 2))
                .named("Cream, price", "%")
                .range(SliderRow.Range.of("-50", "100", "1", "0"))
                .setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    }

    static ScatterPlot.Plot menu() {
        List<ScatterPlot.Kind> kinds = List.of(
                new ScatterPlot.Kind("Puzzle", PlotShape.TRIANGLE, 1),
                new ScatterPlot.Kind("Star", PlotShape.CIRCLE, 0),
                new ScatterPlot.Kind("Dog", PlotShape.DIAMOND, 3),
                new ScatterPlot.Kind("Plowhorse", PlotShape.SQUARE, 2));
        return new ScatterPlot.Plot(
                "Share of portions sold, %",
                "Contribution per portion, EUR",
                IntStream.range(0, 12)
                        .mapToObj(at -> new ScatterPlot.Dot(
                                "p" + at,
                                "Guinea fowl, celeriac " + at,
                                4 + at * 7 % 13,
                                8 + at * 5 % 9 * 0.4,
                                kinds.get((8 + at * 5 % 9 * 0.4 > 10 ? 0 : 2) + (4 + at * 7 % 13 > 9 ? 1 : 0)),
                                "figures"))
                        .toList(),
                Optional.of(new ScatterPlot.Cut(9, "70 % of an even share: 9 %")),
                Optional.of(new ScatterPlot.Cut(10, "average 10.00")),
                kinds);
    }

    static TimeChart.Chart prices() {
        LocalDate start = LocalDate.of(2026, 9, 29);
        return new TimeChart.Chart(
                "EUR per l",
                List.of(line("Cream", start, 4.1, true), line("Butter", start, 4.6, true)),
                Optional.of(new ScatterPlot.Cut(4.4, "target 4.40")));
    }

    private static TimeChart.Line line(String name, LocalDate start, double base, boolean holds) {
        return new TimeChart.Line(
                name,
                IntStream.range(0, 8)
                        .mapToObj(at -> new TimeChart.Spot(
                                name + at,
                                start.plusDays(at * 7L),
                                base + at * at % 5 * 0.1,
                                start.plusDays(at * 7L) + ": " + base))
                        .toList(),
                holds);
    }

    private static void icons(Composite side) {
        Composite all = new Composite(side, SWT.NONE);
        all.setLayout(new RowLayout(SWT.HORIZONTAL));
        all.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        for (String name :
                ("pass ingredients recipes costing suppliers stock covers orders modules add remove edit undo redo"
                                + " search warning print export import receive count waste issue use make move price scale plan day cut-off"
                                + " delivery expiry slate close stop open new save copy refresh history info check good next previous down up"
                                + " settings house note start dot pot")
                        .split(" ")) {
            Label label = new Label(all, SWT.NONE);
            label.setImage(Icons.large(all, name));
            label.setToolTipText(name);
        }
    }
}
