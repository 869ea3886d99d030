package etamine.inventory.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.item.Item;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.Place;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import etamine.storage.LedgerEntry;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A movement as it stands in a file. A quantity in a unit with a size of its own is written as it is; a word of the
 * item's own is converted when it is written, since the ledger only knows sizes.
 *
 * @param kind its kind
 * @param id its identifier; empty when the file gives none
 * @param at when it happened; empty when the file doesn't say
 * @param item the item
 * @param place where
 * @param quantity with the sign of the file
 * @param node all that stands in the file
 */
record MovementReader(
        MovementKind kind,
        String id,
        Optional<Instant> at,
        String item,
        String place,
        Optional<Quantity> quantity,
        JsonNode node) {
    private static final Set<String> KEYS =
            Set.of("id", "at", "kind", "item", "place", "lot", "quantity", "useBy", "unitCost", "since", "reverses");

    static MovementReader read(EntryReader reader, JsonNode node, MovementKind kind) {
        if (!reader.has("quantity")) {
            reader.trouble("quantity", "Write the quantity, such as 0.5 l.");
        }
        reader.date("useBy");
        reader.price("unitCost");
        reader.read("since", MovementReader::instant);
        return new MovementReader(
                kind,
                reader.text("id"),
                reader.read("at", MovementReader::instant),
                reader.needed("item"),
                reader.text("place"),
                reader.quantity("quantity"),
                node);
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException unreadable) {
            throw new IllegalArgumentException(
                    "“" + text + "” is not a moment; write one such as 2026-11-20T18:00:00Z.", unreadable);
        }
    }

    /** What does not fit the items and places that the file and the book declare. */
    List<Trouble> beside(Facts facts) {
        List<Trouble> troubles = new ArrayList<>();
        Optional<Item> known = facts.find(Item.class, item);
        if (known.isEmpty() && facts.covers(Item.class)) {
            troubles.add(new Trouble(
                    "/item", "There is no item “" + item + "”; add it under ingredients or correct the id."));
        }
        if (!place.isEmpty() && facts.find(Place.class, place).isEmpty()) {
            troubles.add(
                    new Trouble("/place", "There is no place “" + place + "”; add it under places or correct the id."));
        }
        quantity.map(new ItemMeasure(item, known)::conversion)
                .filter(Conversion.Missing.class::isInstance)
                .map(Conversion.Missing.class::cast)
                .ifPresent(missing -> troubles.add(new Trouble(
                        "/quantity",
                        "This cannot be brought to what “" + item + "” is counted in. " + missing.text())));
        return troubles;
    }

    /** The ledger entry it comes to; only of one without troubles. */
    LedgerEntry entry(String entryId, Instant moment, Optional<Item> known) {
        EntryReader reader = new EntryReader(node);
        Quantity kept = kept(quantity.orElseThrow(), known);
        long base = kept.toBase();
        LotKey lot = new LotKey(
                place,
                reader.text("lot"),
                reader.text("useBy"),
                reader.price("unitCost").map(UnitPrice::toString).orElse(""),
                reader.has("since") ? reader.text("since") : since(moment),
                kept.unit().dimension());
        long amount = Draft.direction(kind) < 0 ? Math.negateExact(base) : base;
        return new Draft(kind, item, lot, amount, detail())
                .entry(entryId, moment, Optional.of(reader.text("reverses")).filter(text -> !text.isEmpty()));
    }

    private String since(Instant moment) {
        return Draft.direction(kind) > 0 ? LotKey.text(moment) : "";
    }

    private Quantity kept(Quantity written, Optional<Item> known) {
        return written.unit().dimension() == Dimension.WORD
                ? new ItemMeasure(item, known).conversion(written).orThrow()
                : written;
    }

    private ObjectNode detail() {
        ObjectNode detail = Json.empty();
        node.properties().stream()
                .filter(member -> !KEYS.contains(member.getKey()))
                .forEach(member -> detail.set(member.getKey(), member.getValue()));
        return detail;
    }
}
