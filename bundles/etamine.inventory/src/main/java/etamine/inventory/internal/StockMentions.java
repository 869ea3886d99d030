package etamine.inventory.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.inventory.RefusedException;
import etamine.inventory.internal.ItemMeasure.Amount;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions;
import etamine.kitchen.item.Replacement;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import etamine.storage.Transaction;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/**
 * Where the ledger names an item. What happened stays as it was written; what is left is moved, lot by lot with its
 * place, mark, last day and cost, from one item to the other.
 */
@Component
public final class StockMentions implements ItemMentions {
    /** Marks the two halves of what went over; each names the item of the other half. */
    static final String MERGED_WITH = "mergedWith";

    private final StockJournal journal;
    private final KnownItems items;
    private final Kitchen kitchen;

    /** Looks through that journal. */
    @Activate
    public StockMentions(@Reference StockJournal journal, @Reference KnownItems items, @Reference Kitchen kitchen) {
        this.journal = journal;
        this.items = items;
        this.kitchen = kitchen;
    }

    @Override
    public List<Mention> of(String item) {
        if (journal.amounts(item).isEmpty()) {
            return List.of();
        }
        ItemMeasure measure = items.measure(item);
        Map<LotKey, Long> lots = Netting.of(journal.amounts(item));
        Map<Dimension, Long> sums = new EnumMap<>(Dimension.class);
        lots.forEach((lot, amount) -> sums.merge(lot.dimension(), amount, Long::sum));
        String much = sums.entrySet().stream()
                .map(sum -> measure.shown(sum.getKey(), sum.getValue()).toString())
                .collect(Collectors.joining(" and "));
        return List.of(new Mention(
                "stock",
                item,
                "In stock: " + (lots.isEmpty() ? "nothing left" : much)
                        + (lots.size() > 1 ? " in " + lots.size() + " lots" : "")));
    }

    @Override
    public int rewrite(Transaction transaction, Item from, Item into) {
        Replacement replacement = new Replacement(from, into);
        ObjectNode why = Json.empty().put("reason", "Merged " + from.name() + " into " + into.name());
        Instant at = kitchen.clock().instant().truncatedTo(ChronoUnit.MILLIS);
        int written = 0;
        for (Map.Entry<LotKey, Long> lot : journal.amounts(from.id()).entrySet()) {
            ObjectNode toInto = why.deepCopy().put(MERGED_WITH, into.id());
            ObjectNode toFrom = why.deepCopy().put(MERGED_WITH, from.id());
            Draft out = new Draft(MovementKind.MOVED, from.id(), lot.getKey(), -lot.getValue(), toInto);
            Draft in = in(replacement, lot.getKey(), lot.getValue(), toFrom);
            transaction.append(StockJournal.LEDGER, out.at(at));
            transaction.append(StockJournal.LEDGER, in.at(at));
            written += 2;
        }
        return written;
    }

    private static Draft in(Replacement replacement, LotKey lot, long amount, ObjectNode why) {
        Item into = replacement.into();
        boolean less = amount < 0;
        Quantity size = Quantity.fromBase(lot.dimension(), Math.abs(amount));
        try {
            Amount kept = new ItemMeasure(into.id(), Optional.of(into)).kept(replacement.quantity(size));
            String cost = lot.unitCost()
                    .map(replacement::price)
                    .map(UnitPrice::toString)
                    .orElse("");
            LotKey same = new LotKey(lot.place(), lot.lot(), lot.useBy(), cost, lot.since(), kept.dimension());
            return new Draft(MovementKind.MOVED, into.id(), same, less ? -kept.base() : kept.base(), why);
        } catch (RefusedException missing) {
            throw new IllegalArgumentException(missing.getMessage(), missing);
        }
    }
}
