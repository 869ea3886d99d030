package etamine.inventory.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.inventory.Movement;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.storage.LedgerEntry;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A ledger entry as it is written in the exchange form, and as other bundles see it. */
final class MovementForm {
    private static final long LARGE = 1_000_000;

    private MovementForm() {}

    /** The entry's exchange form: what was written, exact, with the members that only a file knew. */
    static ObjectNode json(LedgerEntry entry) {
        LotKey lot = LotKey.of(entry.keys());
        MovementKind kind = Draft.kind(entry.keys().get("kind"));
        ObjectNode json =
                Json.empty().put("id", entry.id()).put("at", entry.at().toString());
        if (kind != MovementKind.OPENING) {
            json.put("kind", Draft.text(kind));
        }
        json.put("item", entry.keys().get("item"));
        Json.with(json, "place", lot.place());
        Json.with(json, "lot", lot.lot());
        json.put("quantity", quantity(lot, signed(kind, entry)).toString());
        Json.with(json, "useBy", lot.useBy());
        lot.unitCost().ifPresent(cost -> price(json.putObject("unitCost"), cost));
        if (!lot.since().equals(defaultSince(kind, entry))) {
            json.put("since", lot.since());
        }
        entry.reverses().ifPresent(id -> json.put("reverses", id));
        json.setAll(Json.parse(entry.detail()));
        return json;
    }

    /** When a lot came, where nothing else is said: with the entry that brings it. */
    static String defaultSince(MovementKind kind, LedgerEntry entry) {
        return Draft.direction(kind) > 0 ? LotKey.text(entry.at()) : "";
    }

    private static long signed(MovementKind kind, LedgerEntry entry) {
        long amount = entry.measures().get(StockJournal.AMOUNT);
        return Draft.direction(kind) < 0 ? Math.negateExact(amount) : amount;
    }

    private static Quantity quantity(LotKey lot, long amount) {
        Quantity quantity = Quantity.fromBase(lot.dimension(), amount);
        boolean large = Math.abs(amount) >= LARGE;
        return switch (lot.dimension()) {
            case MASS -> quantity.in(large ? Unit.KG : Unit.G);
            case VOLUME -> quantity.in(large ? Unit.L : Unit.ML);
            default -> quantity;
        };
    }

    static void price(ObjectNode onto, UnitPrice price) {
        onto.put("amount", price.amount().toPlainString())
                .put("per", price.per().toString());
    }

    /** The entry as a movement, its quantity in the unit the item is counted in. */
    static Movement movement(LedgerEntry entry, ItemMeasure measure, boolean reversed) {
        LotKey lot = LotKey.of(entry.keys());
        return new Movement(
                entry.id(),
                entry.at(),
                Draft.kind(entry.keys().get("kind")),
                entry.keys().get("item"),
                lot.place(),
                lot.lot(),
                measure.shown(lot.dimension(), entry.measures().get(StockJournal.AMOUNT)),
                lot.lastDay(),
                lot.unitCost(),
                note(Json.parse(entry.detail())),
                entry.reverses(),
                reversed);
    }

    private static String note(ObjectNode detail) {
        List<String> parts = Stream.of("reason", "recipe", "order", "supplier")
                .map(member -> Optional.of(detail.path(member).asText(""))
                        .filter(text -> !text.isEmpty())
                        .map(text -> member.equals("reason") ? text : member + " " + text)
                        .orElse(""))
                .filter(text -> !text.isEmpty())
                .toList();
        return String.join(", ", parts);
    }
}
