package etamine.inventory.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.UnitPrice;
import etamine.storage.LedgerEntry;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Prices that the ledger itself knows: the last one paid, and the moving average of what is on the shelf. */
@Component(service = PaidPrices.class)
public final class PaidPrices {
    private final StockJournal journal;
    private final KnownItems items;
    private final Kitchen kitchen;
    private final Map<String, Kept> last = new ConcurrentHashMap<>();
    private final Map<String, Kept> average = new ConcurrentHashMap<>();

    /** Reads that journal. */
    @Activate
    public PaidPrices(@Reference StockJournal journal, @Reference KnownItems items, @Reference Kitchen kitchen) {
        this.journal = journal;
        this.items = items;
        this.kitchen = kitchen;
    }

    /**
     * A price from the ledger.
     *
     * @param price the price
     * @param on the day of the last movement it rests on
     */
    record Paid(UnitPrice price, LocalDate on) {}

    /** The price of the latest receipt that has one. */
    Optional<Paid> last(String item) {
        return kept(last, item, this::readLast);
    }

    private Optional<Paid> readLast(String item) {
        List<LedgerEntry> receipts = Standing.of(journal.entries(item, MovementKind.RECEIVED));
        for (int i = receipts.size() - 1; i >= 0; i--) {
            LedgerEntry receipt = receipts.get(i);
            Optional<UnitPrice> cost = LotKey.price(receipt.keys().get("unit_cost"));
            if (cost.isPresent()) {
                return Optional.of(new Paid(cost.get(), day(receipt)));
            }
        }
        return Optional.empty();
    }

    /** The moving average over everything that came with a cost. */
    Optional<Paid> average(String item) {
        return kept(average, item, this::readAverage);
    }

    private Optional<Paid> readAverage(String item) {
        MovingAverage moving = new MovingAverage(items.measure(item));
        List<LedgerEntry> standing = Standing.of(journal.entries(item));
        standing.forEach(moving::take);
        Optional<LocalDate> on =
                standing.isEmpty() ? Optional.empty() : Optional.of(day(standing.get(standing.size() - 1)));
        return on.flatMap(day -> moving.price().map(price -> new Paid(price, day)));
    }

    /** What was read before, unless the item has moved or is measured otherwise since. */
    private Optional<Paid> kept(Map<String, Kept> known, String item, Function<String, Optional<Paid>> read) {
        long moves = journal.moves(item);
        Optional<Item> measured = items.find(item);
        Kept kept = known.get(item);
        if (kept == null || kept.moves() != moves || !kept.item().equals(measured)) {
            kept = new Kept(moves, measured, read.apply(item));
            known.put(item, kept);
        }
        return kept.paid();
    }

    private record Kept(long moves, Optional<Item> item, Optional<Paid> paid) {}

    private LocalDate day(LedgerEntry entry) {
        return entry.at().atZone(kitchen.house().zone()).toLocalDate();
    }
}
