package etamine.inventory.internal;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.inventory.Movement;
import etamine.inventory.Stockroom;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the verbs that move stock say: the movements, and cautions below them. */
final class MovementReport {
    private MovementReport() {}

    static Report of(List<Movement> movements, KnownItems items, List<String> more) {
        return look(movements, items, more, List.of());
    }

    /** The same with warnings, which make it something to look at. */
    static Report look(List<Movement> movements, KnownItems items, List<String> more, List<String> warnings) {
        TextTable table = new TextTable("Item", "Kind", ">Quantity", "Place", "Use by", "Cost");
        List<Map<String, Object>> json = new ArrayList<>();
        for (Movement movement : movements) {
            json.add(json(movement));
            table.row(
                    items.name(movement.item()),
                    Draft.text(movement.kind()),
                    movement.quantity().toString(),
                    movement.place(),
                    movement.useBy().map(LocalDate::toString).orElse(""),
                    movement.unitCost().map(Object::toString).orElse(""));
        }
        List<String> lines = new ArrayList<>(table.lines());
        if (movements.isEmpty()) {
            lines.add("Nothing had to be moved.");
        }
        lines.addAll(more);
        if (warnings.isEmpty()) {
            return Report.done(Map.of("movements", json), lines);
        }
        lines.addAll(warnings);
        Map<String, Object> whole = new LinkedHashMap<>();
        whole.put("movements", json);
        whole.put("warnings", warnings);
        return new Report(Outcome.LOOK, whole, lines);
    }

    private static Map<String, Object> json(Movement movement) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", movement.id());
        json.put("at", movement.at().toString());
        json.put("kind", Draft.text(movement.kind()));
        json.put("item", movement.item());
        json.put("place", movement.place());
        json.put("quantity", asWritten(movement).toString());
        if (!movement.lot().isEmpty()) {
            json.put("lot", movement.lot());
        }
        movement.useBy().ifPresent(day -> json.put("useBy", day.toString()));
        movement.unitCost().ifPresent(cost -> json.put("unitCost", price(cost)));
        if (!movement.note().isEmpty()) {
            json.put("reason", movement.note());
        }
        return json;
    }

    /** The quantity as the exchange form has it: without a minus where the kind already says that it went out. */
    private static Quantity asWritten(Movement movement) {
        return Draft.direction(movement.kind()) < 0 ? movement.quantity().negate() : movement.quantity();
    }

    static Map<String, String> price(UnitPrice price) {
        Map<String, String> json = new LinkedHashMap<>();
        json.put("amount", price.amount().toPlainString());
        json.put("per", price.per().toString());
        return json;
    }

    /** A warning for everything that was taken although it was not there. */
    static List<String> owing(List<Movement> movements, KnownItems items, Stockroom room) {
        return movements.stream()
                .filter(movement -> movement.quantity().signum() < 0)
                .map(Movement::item)
                .distinct()
                .flatMap(item -> room
                        .owing(item)
                        .map(owed -> "More " + items.name(item) + " has gone out than ever came in, by " + owed
                                + ": enter what came, or count it.")
                        .stream())
                .toList();
    }

    /** A caution for everything that was used although its marked day has passed. */
    static List<String> cautions(List<Movement> movements, KnownItems items, LocalDate today) {
        return movements.stream()
                .filter(movement -> movement.quantity().signum() < 0
                        && movement.useBy().filter(today::isAfter).isPresent())
                .map(movement -> "Caution: " + items.name(movement.item()) + " was taken from a lot marked "
                        + movement.useBy().orElseThrow()
                        + "; the date mark and local rules decide whether it may be used.")
                .distinct()
                .toList();
    }
}
