package etamine.inventory.ui.internal;

import etamine.inventory.CountLine;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A count in the making: what was typed for each item of one place. Nothing is written until it is finished; what was
 * left empty was not counted and stays as it is.
 */
final class CountModel {
    private final StockModel stock;
    private final String place;
    private final Map<String, Line> lines = new LinkedHashMap<>();

    /**
     * One line of the sheet.
     *
     * @param item the item
     * @param name its name
     * @param expected what the ledger says is there
     * @param unit what a number alone is taken in: the unit in which that is shown
     * @param typed what was counted, as typed; empty when not counted
     */
    record Line(String item, String name, String expected, Unit unit, String typed) {}

    CountModel(StockModel stock, String place) {
        this.stock = stock;
        this.place = place;
        Optional<String> there = place.isEmpty() ? Optional.empty() : Optional.of(place);
        stock.rows(stock.today(), there).forEach(row -> lines.put(row.item(), line(row)));
    }

    private Line line(StockRow row) {
        return new Line(
                row.item(), row.name(), row.onHand(), stock.shownIn(row.line().onHand()), "");
    }

    String place() {
        return place;
    }

    List<Line> lines() {
        return List.copyOf(lines.values());
    }

    /** Adds an item that the ledger doesn't know of in this place. */
    void add(String item, String name) {
        lines.putIfAbsent(item, new Line(item, name, "0 " + stock.countIn(item), stock.countIn(item), ""));
    }

    /** Notes what was typed; answers what is wrong with it, if anything. */
    Optional<String> type(String item, String typed) {
        Line line = lines.get(item);
        if (line == null) {
            return Optional.of("This item is not on the sheet.");
        }
        lines.put(item, new Line(line.item(), line.name(), line.expected(), line.unit(), typed.strip()));
        return problem(item);
    }

    private Optional<String> problem(String item) {
        Line line = lines.get(item);
        if (line == null || line.typed().isEmpty()) {
            return Optional.empty();
        }
        try {
            stock.quantity(item, line.typed(), line.unit());
            return Optional.empty();
        } catch (IllegalArgumentException unreadable) {
            return Optional.of(String.valueOf(unreadable.getMessage()));
        }
    }

    /** Items whose text cannot be read. */
    List<String> faulty() {
        return lines.keySet().stream().filter(item -> problem(item).isPresent()).toList();
    }

    /** How many items were counted so far. */
    long counted() {
        return lines.values().stream().filter(line -> !line.typed().isEmpty()).count();
    }

    /** Writes the differences in one transaction; answers how many there were. */
    int finish() {
        List<CountLine> counted = new ArrayList<>();
        lines.values().stream()
                .filter(line -> !line.typed().isEmpty())
                .forEach(line -> counted.add(new CountLine(
                        line.item(),
                        place,
                        stock.quantity(line.item(), line.typed(), line.unit()),
                        Optional.empty(),
                        "")));
        return stock.room().count(counted).size();
    }
}
