package etamine.inventory.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.item.Item;
import etamine.kitchen.stock.MovementKind;
import etamine.storage.LedgerEntry;
import etamine.storage.Selection;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Reads and writes the ledger's entries as sections. An entry that the ledger has already, exactly so, is left alone;
 * another one under the same id is refused, since nothing in a ledger ever changes.
 *
 * @param journal the ledger
 */
record LedgerSections(StockJournal journal) {

    /**
     * The earliest movement of a file, so that opening stock without a time of its own comes before it.
     *
     * @param at when it happened
     */
    record Earliest(Instant at) {}

    ExchangeEntry entry(String pointer, MovementReader movement, List<Trouble> troubles, Moment moment) {
        String id = movement.id();
        if (!troubles.isEmpty()) {
            return ReadEntry.refused(pointer, id, troubles);
        }
        AtomicReference<Optional<LedgerEntry>> fresh = new AtomicReference<>(Optional.empty());
        return new ReadEntry(
                pointer,
                id,
                List.of(),
                all -> {
                    List<Trouble> found = new ArrayList<>(movement.beside(all));
                    if (found.isEmpty()) {
                        LedgerEntry entry = movement.entry(id, moment.of(all), all.find(Item.class, movement.item()));
                        Optional<LedgerEntry> there = journal.ledger().entry(id);
                        if (there.isPresent()
                                && !same(there.get(), entry, movement.at().isPresent())) {
                            found.add(new Trouble(
                                    "",
                                    "The movement “" + id + "” is in the book already, but not like"
                                            + " this; give this one an id of its own, or take the other back."));
                        }
                        fresh.set(there.isPresent() ? Optional.empty() : Optional.of(entry));
                    }
                    return found;
                },
                to -> fresh.get().ifPresent(entry -> to.append(StockJournal.LEDGER, entry)));
    }

    /** When an entry without a time of its own happened. */
    @FunctionalInterface
    interface Moment {
        Instant of(Facts facts);
    }

    private static boolean same(LedgerEntry one, LedgerEntry other, boolean timed) {
        Map<String, String> keys = new HashMap<>(one.keys());
        Map<String, String> otherKeys = new HashMap<>(other.keys());
        if (!timed) {
            keys.remove("since");
            otherKeys.remove("since");
        }
        return keys.equals(otherKeys)
                && one.measures().equals(other.measures())
                && one.reverses().equals(other.reverses())
                && (!timed || one.at().equals(other.at()))
                && Json.parse(one.detail()).equals(Json.parse(other.detail()));
    }

    /** The movement with an id made from its content when it has none; equal ones of a file are numbered. */
    static MovementReader identified(MovementReader movement, Map<String, Integer> seen) {
        if (!movement.id().isEmpty()) {
            return movement;
        }
        String content = movement.kind() + movement.node().toString();
        int number = seen.merge(content, 1, Integer::sum);
        String id = UUID.nameUUIDFromBytes((content + number).getBytes(StandardCharsets.UTF_8))
                .toString();
        return new MovementReader(
                movement.kind(),
                id,
                movement.at(),
                movement.item(),
                movement.place(),
                movement.quantity(),
                movement.node());
    }

    static MovementReader read(EntryReader reader, JsonNode node, MovementKind kind, Map<String, Integer> seen) {
        return identified(MovementReader.read(reader, node, kind), seen);
    }

    JsonNode dump(Predicate<LedgerEntry> which) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        Stream<LedgerEntry> entries =
                journal.ledger().entries(Selection.all()).stream().filter(which);
        entries.map(MovementForm::json).forEach(all::add);
        return all.isEmpty() ? MissingNode.getInstance() : all;
    }

    static boolean opening(LedgerEntry entry) {
        return Draft.kind(entry.keys().get("kind")) == MovementKind.OPENING;
    }
}
