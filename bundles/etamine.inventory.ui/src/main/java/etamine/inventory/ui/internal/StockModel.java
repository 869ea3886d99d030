package etamine.inventory.ui.internal;

import etamine.base.Explanation;
import etamine.inventory.Movement;
import etamine.inventory.StockLine;
import etamine.inventory.Stockroom;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.stock.Lot;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.Place;
import etamine.kitchen.stock.Stock;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.widgets.Bars;
import etamine.widgets.Choice;
import etamine.widgets.Tone;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What the stock bench shows, without widgets. Safe on any thread. */
final class StockModel {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final int NEAR = 180;
    private static final int PLACES = 4;
    private static final int LATEST = 200;
    private static final int BARS = 12;
    private static final int WHOLE = 100;

    private final Stockroom room;
    private final Stock stock;
    private final Kitchen kitchen;
    private final Supplier<Optional<Items>> items;

    StockModel(Stockroom room, Stock stock, Kitchen kitchen, Supplier<Optional<Items>> items) {
        this.room = room;
        this.stock = stock;
        this.kitchen = kitchen;
        this.items = items;
    }

    Stockroom room() {
        return room;
    }

    LocalDate today() {
        return kitchen.today();
    }

    Currency currency() {
        return kitchen.house().currency();
    }

    List<Place> places() {
        return stock.places();
    }

    List<Choice> placeChoices() {
        return places().stream()
                .map(place -> new Choice(place.id(), place.name()))
                .toList();
    }

    /** Stock against the pars of a day; of one place only where one is named, with what ever lay there. */
    List<StockRow> rows(LocalDate day, Optional<String> place) {
        List<StockLine> lines = place.map(id -> room.linesIn(day, id)).orElseGet(() -> room.lines(day));
        return lines.stream().map(this::row).toList();
    }

    private StockRow row(StockLine line) {
        return new StockRow(
                line.item(),
                line.name(),
                text(line.onHand()),
                line.onOrder().isZero() ? "" : text(line.onOrder()),
                line.par().map(this::text).orElse(""),
                line.percentOfPar().map(percent -> percent + " %").orElse(""),
                line.shortBy()
                        .filter(missing -> !missing.isZero())
                        .map(this::text)
                        .orElse(""),
                line.value().map(value -> value.rounded().toString()).orElse("no price"),
                line.nextUseBy().map(this::day).orElse(""),
                line.nextUseBy().filter(this::due).isPresent(),
                line);
    }

    private boolean due(LocalDate useBy) {
        return !useBy.isAfter(kitchen.today());
    }

    /** A day of the coming weeks by its weekday, a distant one with its year. */
    private String day(LocalDate day) {
        boolean near = Math.abs(ChronoUnit.DAYS.between(today(), day)) < NEAR;
        return (near ? DAY : YEAR).format(day);
    }

    /** A cost as people say it: {@code 34.00 / kg}. */
    private static String text(UnitPrice cost) {
        BigDecimal amount = cost.amount().setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        String per = cost.per().toString();
        return amount.setScale(Math.max(2, amount.scale())).toPlainString() + " / "
                + (per.startsWith("1 ") ? per.substring(2) : per);
    }

    String text(Quantity quantity) {
        return QuantityText.format(quantity, kitchen.house().measures());
    }

    /** The items that are furthest below par, as bars against it. */
    List<Bars.Bar> bars(List<StockRow> rows) {
        return rows.stream()
                .filter(row -> !row.percent().isEmpty())
                .sorted(Comparator.comparing(StockRow::share))
                .limit(BARS)
                .map(StockModel::bar)
                .toList();
    }

    private static Bars.Bar bar(StockRow row) {
        double share = Math.max(0, row.share()) / (double) WHOLE;
        double scale = Math.max(1, share);
        String coming = row.onOrder().isEmpty() ? "" : ", " + row.onOrder() + " on order";
        Tone tone = row.isShort() ? Tone.WARN : row.share() < WHOLE ? Tone.PLAIN : Tone.GOOD;
        return new Bars.Bar(row.name(), share / scale, 1 / scale, row.onHand() + " of " + row.par() + coming, tone);
    }

    List<LotRow> lots(StockRow row) {
        List<LotRow> lots = new ArrayList<>();
        for (Lot lot : row.line().lots()) {
            lots.add(new LotRow(
                    String.valueOf(lots.size()),
                    placeName(lot.place()),
                    lot.lot(),
                    text(lot.quantity()),
                    lot.useBy().map(this::day).orElse("not marked"),
                    lot.useBy().orElse(LocalDate.MAX),
                    lot.unitCost().map(StockModel::text).orElse("not known"),
                    lot.useBy().filter(this::due).isPresent()));
        }
        return lots;
    }

    List<MovementRow> movements(String item) {
        return room.movements(item, LATEST).stream().map(this::row).toList();
    }

    private MovementRow row(Movement movement) {
        boolean standing = movement.reverses().isEmpty() && !movement.reversed();
        String note = movement.reversed() ? joined(movement.note(), "taken back") : movement.note();
        return new MovementRow(
                movement.id(),
                CLOCK.format(movement.at().atZone(kitchen.house().zone())),
                movement.reverses().isPresent()
                        ? "taken back"
                        : movement.kind().name().toLowerCase(Locale.ROOT),
                text(movement.quantity()),
                placeName(movement.place()),
                note,
                standing);
    }

    private static String joined(String one, String other) {
        return one.isEmpty() ? other : one + ", " + other;
    }

    String placeName(String id) {
        return places().stream()
                .filter(place -> place.id().equals(id))
                .map(Place::name)
                .findFirst()
                .orElse(id);
    }

    Explanation explain(String item) {
        return room.explain(item);
    }

    /** Everything that can be moved: what the kitchen knows and what ever moved. */
    List<Choice> itemChoices() {
        Map<String, String> names = new TreeMap<>();
        items.get().map(Items::all).orElse(Map.of()).forEach((id, item) -> names.put(id, item.name()));
        room.lines(today()).forEach(line -> names.putIfAbsent(line.item(), line.name()));
        return names.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(String.CASE_INSENSITIVE_ORDER))
                .map(entry -> new Choice(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** A quantity of an item as typed, with its unit. */
    Quantity quantity(String item, String typed) {
        List<Unit> words = items.get().flatMap(all -> all.find(item)).map(Item::measures).orElse(List.of()).stream()
                .flatMap(measure -> Stream.of(measure.of().unit(), measure.is().unit()))
                .toList();
        return QuantityText.parse(typed.strip(), words);
    }

    /** The same where a number alone is in the unit that stands beside it. */
    Quantity quantity(String item, String typed, Unit beside) {
        String text = typed.strip();
        boolean alone = text.matches("[0-9]+([.,][0-9]+)?|[0-9]+ [0-9]+/[0-9]+|[0-9]+/[0-9]+");
        return quantity(item, alone ? text + " " + beside.symbol() : text);
    }

    /** The unit in which a quantity is shown. */
    Unit shownIn(Quantity quantity) {
        Quantity size = quantity.signum() < 0 ? quantity.negate() : quantity;
        return QuantityText.parse(text(size)).unit();
    }

    /** The unit an item is counted in. */
    Unit countIn(String item) {
        return items.get().flatMap(all -> all.find(item)).map(Item::countIn).orElse(Unit.EA);
    }

    /** Takes a movement back. */
    void takeBack(String movement) {
        room.reverse(movement, "taken back at the stock station");
    }

    /** What to say after something was taken out: that undo brings it back, or that more went than was there. */
    String taken(Quantity quantity, String item) {
        return room.owing(item)
                .map(owed -> quantity + " taken out, but " + text(owed)
                        + " more than ever came in: enter what came, or count it.")
                .orElse(quantity + " taken out; undo brings it back.");
    }

    /** What is most used of the doors through which things leave. */
    static List<Choice> doors() {
        return List.of(
                new Choice(MovementKind.WASTED.name(), "Wasted"),
                new Choice(MovementKind.USED.name(), "Used"),
                new Choice(MovementKind.STAFF.name(), "Staff meal"),
                new Choice(MovementKind.GIVEN.name(), "Given away: promotion, tasting, on the house"),
                new Choice(MovementKind.SENT.name(), "Sent elsewhere in the house"),
                new Choice(MovementKind.RESOLD.name(), "Sold as it is, not on a plate"),
                new Choice(MovementKind.RETURNED.name(), "Returned to the supplier"));
    }
}
