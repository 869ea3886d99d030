package etamine.inventory.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.stock.MovementKind;
import etamine.storage.LedgerEntry;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * A movement about to be written.
 *
 * @param kind by which door
 * @param item the item
 * @param lot which lot
 * @param amount base units, more than zero for what comes
 * @param detail further facts: reason, order, supplier, recipe
 */
record Draft(MovementKind kind, String item, LotKey lot, long amount, ObjectNode detail) {

    /** The entry for the ledger, with an id of its own. */
    LedgerEntry at(Instant at) {
        return entry(UUID.randomUUID().toString(), at, Optional.empty());
    }

    LedgerEntry entry(String id, Instant at, Optional<String> reverses) {
        Map<String, String> keys = Map.of(
                "item", item,
                "place", lot.place(),
                "lot", lot.lot(),
                "kind", text(kind),
                "dimension", lot.dimension().name(),
                "use_by", lot.useBy(),
                "unit_cost", lot.cost(),
                "since", lot.since());
        Instant moment = at.truncatedTo(ChronoUnit.MILLIS);
        return new LedgerEntry(id, moment, keys, Map.of(StockJournal.AMOUNT, amount), detail.toString(), reverses);
    }

    static String text(MovementKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    static MovementKind kind(String text) {
        return MovementKind.valueOf(text.toUpperCase(Locale.ROOT));
    }

    /** 1 for doors through which things come, -1 for those through which they go, 0 where both happen. */
    static int direction(MovementKind kind) {
        return switch (kind) {
            case OPENING, RECEIVED, MADE, BROUGHT -> 1;
            case USED, SOLD, WASTED, RETURNED, STAFF, GIVEN, RESOLD, SENT -> -1;
            case MOVED, COUNTED -> 0;
        };
    }
}
