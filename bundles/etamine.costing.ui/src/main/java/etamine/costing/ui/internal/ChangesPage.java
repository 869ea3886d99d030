package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.ChangeBars;
import etamine.widgets.Column;
import etamine.widgets.DayField;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import etamine.widgets.TimeChart;
import etamine.widgets.Tone;
import java.time.LocalDate;
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

/** Since a day: prices that moved with an item's course, and plates that moved with what moved them. */
final class ChangesPage implements CostPage {
    private final Frame frame;
    private final ChangesModel model;
    private final Composite body;
    private final DayField day;
    private final Label sentence;
    private final ListTable<PriceMoveRow> prices;
    private final TimeChart course;
    private final ListTable<PlateMoveRow> plates;
    private final ChangeBars bars;
    private final ListTable<CauseRow> causes;
    private ChangesModel.Since since;
    private int asked;

    ChangesPage(Composite parent, Frame frame, ChangesModel model) {
        this.frame = frame;
        this.model = model;
        since = new ChangesModel.Since(model.start(), List.of(), List.of());
        body = new Composite(parent, SWT.NONE);
        body.setLayout(tight(3));
        Label label = new Label(body, SWT.NONE);
        label.setText("Since");
        day = new DayField(body, model::today);
        Spoken.id(day.control(), "field:since");
        Spoken.label(day.control(), label);
        GridData narrow = new GridData(SWT.LEFT, SWT.CENTER, false, false);
        narrow.widthHint = 130;
        day.setLayoutData(narrow);
        sentence = Spoken.id(new Label(body, SWT.WRAP), "changes:sentence");
        sentence.setFont(Fonts.bold(body));
        sentence.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        SashForm halves = new SashForm(body, SWT.HORIZONTAL);
        halves.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
        SashForm lists = new SashForm(halves, SWT.VERTICAL);
        plates = new ListTable<>(lists, "table:plate-moves", PlateMoveRow::id, plateColumns())
                .whenEmpty("No plate costs anything else than on that day.")
                .onSelect(rows -> plateSelected())
                .onOpen(row -> frame.go(new Subject("recipe", row.id())));
        prices = new ListTable<>(lists, "table:price-moves", PriceMoveRow::key, priceColumns())
                .whenEmpty("No price has changed since that day.")
                .onSelect(rows -> priceSelected())
                .onOpen(row -> frame.go(new Subject("item", row.item())));
        SashForm pictures = new SashForm(halves, SWT.VERTICAL);
        Composite why = new Composite(pictures, SWT.NONE);
        why.setLayout(tight(1));
        bars = new ChangeBars(why);
        bars.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        causes = new ListTable<>(why, "table:causes", CauseRow::key, causeColumns())
                .whenEmpty("Select a plate to see what moved it.")
                .onOpen(row -> frame.go(new Subject("item", row.subject())));
        causes.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        course = new TimeChart(pictures);
        pictures.setWeights(62, 38);
        halves.setWeights(54, 46);
        day.set(model.start());
        day.onChange(value -> value.ifPresent(from -> read()));
    }

    private static GridLayout tight(int columns) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = 0;
        layout.marginHeight = 4;
        return layout;
    }

    private static List<Column<PlateMoveRow>> plateColumns() {
        return List.of(
                Column.words("Plate", 5, PlateMoveRow::name),
                Column.figures(
                        "Now",
                        1,
                        PlateMoveRow::nowText,
                        Comparator.comparing(row -> row.move().now())),
                Column.<PlateMoveRow>figures(
                                "Change",
                                1,
                                PlateMoveRow::changeText,
                                Comparator.comparing(row -> row.move().change()))
                        .withTone(row -> row.move().change().signum() > 0 ? Tone.BAD : Tone.GOOD),
                Column.<PlateMoveRow>figures(
                                "Food cost", 1, PlateMoveRow::percentText, Comparator.comparing(PlateMoveRow::percent))
                        .withIcon(row -> row.move().overTarget() ? "warning" : "")
                        .withTone(row -> row.move().overTarget() ? Tone.WARN : Tone.PLAIN));
    }

    private static List<Column<CauseRow>> causeColumns() {
        Comparator<CauseRow> byAmount = Comparator.comparing(
                row -> row.amount().orElse(null), Comparator.nullsFirst(Comparator.naturalOrder()));
        return List.of(
                Column.words("What", 3, CauseRow::name),
                Column.words("Kind", 1, CauseRow::kind),
                Column.figures("Adds", 1, CauseRow::amountText, byAmount),
                Column.words("How", 4, CauseRow::text));
    }

    private static List<Column<PriceMoveRow>> priceColumns() {
        return List.of(
                Column.words("From", 2, PriceMoveRow::day)
                        .sorted(Comparator.comparing(row -> row.move().on())),
                Column.words("Item", 4, PriceMoveRow::name),
                Column.figures(
                        "Before",
                        2,
                        PriceMoveRow::fromText,
                        Comparator.comparing(row -> row.move().from().amount())),
                Column.figures(
                        "After",
                        2,
                        PriceMoveRow::toText,
                        Comparator.comparing(row -> row.move().to().amount())),
                Column.<PriceMoveRow>figures(
                                "Change", 1, PriceMoveRow::percentText, Comparator.comparing(PriceMoveRow::percent))
                        .withTone(row -> row.dearer() ? Tone.BAD : Tone.GOOD));
    }

    private void read() {
        LocalDate from = day.value().orElseGet(model::start);
        int turn = ++asked;
        frame.work("Comparing with " + from, progress -> model.read(from), found -> {
            if (turn == asked) {
                since = found;
                paint();
            }
        });
    }

    private void paint() {
        sentence.setText(model.sentence(since));
        body.layout();
        plates.setRows(since.plates());
        prices.setRows(since.prices());
        since.prices().stream()
                .filter(row -> prices.selected().isEmpty())
                .findFirst()
                .ifPresent(row -> prices.select(row.key()));
        since.plates().stream()
                .filter(row -> plates.selected().isEmpty())
                .findFirst()
                .ifPresent(row -> plates.select(row.id()));
        plateSelected();
    }

    private void plateSelected() {
        Optional<PlateMoveRow> row = plates.selected();
        bars.show(row.map(found -> model.bars(found, since.day())).orElse(List.of()));
        causes.setRows(row.map(model::causes).orElse(List.of()));
        row.map(found -> model.explain(found, since.day())).ifPresentOrElse(frame::explain, frame::explainNothing);
        bars.getParent().layout();
    }

    private void priceSelected() {
        prices.selected().ifPresent(row -> {
            frame.explain(model.explain(row));
            chart(row.item());
        });
    }

    private void chart(String item) {
        frame.work("Reading the prices of an item", progress -> model.course(item), course::show);
    }

    @Override
    public Control control() {
        return body;
    }

    @Override
    public List<BenchAction> actions() {
        return List.of();
    }

    @Override
    public void refresh() {
        read();
    }

    @Override
    public void show(Subject subject) {
        if (subject.kind().equals("price")) {
            chart(subject.id());
        } else {
            plates.select(subject.id());
        }
    }

    @Override
    public void focus() {
        plates.setFocus();
    }
}
