package etamine.shell.app.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.find.Finder;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.DayMark;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.shell.Station;
import etamine.storage.Book;
import etamine.storage.BookSession;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** Invented modules around a window under test. */
final class Fakes {
    private Fakes() {}

    /** A row of an invented list. */
    record Row(String id, String name, String group, int grams) {}

    /** A session without a file. */
    static final class Session implements BookSession {
        private Optional<Book> book = Optional.empty();

        @Override
        public Book open(String location) {
            return book.orElseThrow();
        }

        @Override
        public Book create(String location) {
            return book.orElseThrow();
        }

        @Override
        public void close() {
            book = Optional.empty();
        }

        @Override
        public Optional<Book> current() {
            return book;
        }
    }

    /** A station with a list of invented rows. */
    static class ListStation implements Station {
        private final String id;
        private final String name;
        private final int order;
        final List<String> happened = new ArrayList<>();

        ListStation(String id, String name, int order) {
            this.id = id;
            this.name = name;
            this.order = order;
        }

        @Override
        public String id() {
            return id;
        }

        @Override
        public String name() {
            return name;
        }

        @Override
        public String icon() {
            return id;
        }

        @Override
        public int order() {
            return order;
        }

        @Override
        public Set<String> shows() {
            return Set.of(id + "-row");
        }

        @Override
        public Bench open(Composite parent, Frame frame) {
            happened.add("open");
            ListTable<Row> table = new ListTable<Row>(
                            parent,
                            "table:" + id,
                            Row::id,
                            List.of(
                                    Column.<Row>words("Name", 5, Row::name),
                                    Column.words("Group", 3, Row::group),
                                    Column.<Row>figures(
                                            "On hand", 2, row -> row.grams() + " g", Comparator.comparing(Row::grams))))
                    .findable("Find in " + name)
                    .onSelect(rows -> rows.stream()
                            .findFirst()
                            .ifPresentOrElse(row -> frame.explain(explained(row)), frame::explainNothing));
            table.setRows(IntStream.range(0, 300)
                    .mapToObj(at -> new Row("r" + at, names(at), at % 3 == 0 ? "Roots" : "Dairy", at * 37 % 5000))
                    .toList());
            return new ListBench(table, frame, happened);
        }

        private static String names(int at) {
            String[] names = {"Celeriac", "Cream", "Butter", "Guinea fowl", "Cider", "Shallots", "Thyme", "Stock, fowl"
            };
            return names[at % names.length] + (at < names.length ? "" : " " + at / names.length);
        }

        private static Explanation explained(Row row) {
            return Explanation.of(
                            row.name() + " on hand",
                            row.grams() + " g",
                            List.of(
                                    Explanation.of(
                                            "Counted on 22 November",
                                            "1 200 g",
                                            List.of(
                                                    Explanation.leaf(
                                                            "Walk-in, shelf 2", "800 g", "count sheet of 22 November"),
                                                    Explanation.leaf(
                                                            "Dry store", "400 g", "count sheet of 22 November"))),
                                    Explanation.leaf("Received since", "2 000 g", "delivery of 23 November"),
                                    Explanation.leaf("Used since", "-700 g", "covers of two days")))
                    .about(new Subject("recipes-row", "r3"));
        }
    }

    private record ListBench(ListTable<Row> table, Frame frame, List<String> happened) implements Bench {

        @Override
        public List<BenchAction> actions() {
            return List.of(
                    BenchAction.of("add", "Add", "add", () -> frame.say("Added."))
                            .onKey(SWT.MOD1 | 'N'),
                    BenchAction.of("work", "Count the shelf", "count", this::longWork)
                            .onKey(SWT.MOD1 | 'K'),
                    BenchAction.of(
                            "fail",
                            "Print",
                            "print",
                            () -> frame.work(
                                    "Printing",
                                    progress -> {
                                        throw new IllegalStateException("There is no printer.");
                                    },
                                    done -> {})),
                    BenchAction.of("remove", "Remove", "remove", () -> happened.add("remove"))
                            .onKey(SWT.DEL)
                            .when(() -> !table.selection().isEmpty()));
        }

        private void longWork() {
            frame.work(
                    "Counting",
                    progress -> {
                        for (int at = 0; at < 40 && !progress.cancelled(); at++) {
                            progress.at("shelf " + (at + 1) + " of 40", at / 40.0);
                            Thread.sleep(100);
                        }
                        return "counted";
                    },
                    frame::say);
        }

        @Override
        public void refresh() {
            happened.add("refresh " + frame.day());
        }

        @Override
        public void show(Subject subject) {
            table.select(subject.id());
        }

        @Override
        public void focus() {
            table.setFocus();
        }
    }

    /** A station that cannot open. */
    static final class BrokenStation extends ListStation {
        BrokenStation() {
            super("broken", "Broken", 50);
        }

        @Override
        public Bench open(Composite parent, Frame frame) {
            throw new IllegalStateException("A part is missing.");
        }
    }

    static List<Call> calls(Instant now) {
        return List.of(
                new Call(
                        "c1",
                        Call.Urgency.NOW,
                        "Dairy order closes in 2 h 10 min: 11 lines, 182.40 EUR",
                        Optional.of(now.plus(Duration.ofMinutes(130))),
                        new Subject("orders-row", "r4")),
                new Call(
                        "c2",
                        Call.Urgency.TODAY,
                        "Celeriac: 1.2 kg under par",
                        Optional.empty(),
                        new Subject("stock-row", "r0")),
                new Call(
                        "c3",
                        Call.Urgency.TODAY,
                        "Veal stock: last day of 3 l",
                        Optional.of(now.plus(Duration.ofHours(8))),
                        new Subject("stock-row", "r7")),
                new Call(
                        "c4",
                        Call.Urgency.SOON,
                        "Cream +14 % since the last list: three plates below their margin",
                        Optional.of(now.plus(Duration.ofDays(3))),
                        new Subject("recipes-row", "r1")));
    }

    static List<DayMark> marks(LocalDate from, LocalDate to) {
        List<DayMark> marks = new ArrayList<>();
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            int weekday = day.getDayOfWeek().getValue();
            Subject subject = new Subject("covers-row", "r" + weekday);
            if (weekday == 1) {
                marks.add(new DayMark(day, DayMark.Kind.NOTE, "closed", subject));
                continue;
            }
            marks.add(new DayMark(day, DayMark.Kind.COVERS, 24 + weekday * 5 + " covers", subject));
            if (weekday == 2 || weekday == 5) {
                marks.add(new DayMark(day, DayMark.Kind.DELIVERY, "Dairy, 6 lines", subject));
                marks.add(new DayMark(day, DayMark.Kind.DELIVERY, "Greens, 11 lines", subject));
            }
            if (weekday == 4) {
                marks.add(new DayMark(day, DayMark.Kind.CUT_OFF, "Dairy 22:00", subject));
            }
            if (weekday == 6) {
                marks.add(new DayMark(day, DayMark.Kind.EXPIRY, "Cream, 1.5 l", subject));
            }
        }
        return marks;
    }

    static List<Finder.Found> find(String text, int atMost) {
        return List.of("Celeriac", "Celeriac puree", "Cream", "Cider jus").stream()
                .filter(name -> name.toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT)))
                .limit(atMost)
                .map(name -> new Finder.Found(new Subject("stock-row", "r2"), name, "ingredient, Roots"))
                .toList();
    }

    /** Everything of a kitchen with seven stations, one of them broken, and one source that throws. */
    static Gathering kitchen() {
        Gathering gathering = Gathering.around(new Session());
        gathering.stations().add(new ListStation("ingredients", "Ingredients", 10));
        gathering.stations().add(new ListStation("recipes", "Recipes", 20));
        gathering.stations().add(new ListStation("costing", "Plate costs", 30));
        gathering.stations().add(new ListStation("suppliers", "Suppliers", 40));
        gathering.stations().add(new BrokenStation());
        gathering.stations().add(new ListStation("stock", "Stock", 60));
        gathering.stations().add(new ListStation("covers", "Covers", 70));
        gathering.stations().add(new ListStation("orders", "Orders", 80));
        gathering.calls().add(Fakes::calls);
        gathering.calls().add(now -> {
            throw new IllegalStateException("the list of lots is damaged");
        });
        gathering.marks().add(Fakes::marks);
        gathering.finders().add(Fakes::find);
        return gathering;
    }
}
