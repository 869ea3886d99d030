package etamine.inventory.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.UnitPrice;
import etamine.storage.LedgerEntry;
import java.time.LocalDate;
import java.util.ArrayList;
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
        return latest(paid(item));
    }

    /** Every price that was paid, oldest first; of several on one day the last. */
    List<Paid> paid(String item) {
        return kept(last, item, this::readPaid);
    }

    private List<Paid> readPaid(String item) {
        List<Paid> paid = new ArrayList<>();
        for (LedgerEntry receipt : Standing.of(journal.entries(item, MovementKind.RECEIVED))) {
            LotKey.price(receipt.keys().get("unit_cost")).ifPresent(cost -> put(paid, new Paid(cost, day(receipt))));
        }
        return paid;
    }

    private static void put(List<Paid> prices, Paid next) {
        if (!prices.isEmpty() && prices.get(prices.size() - 1).on().equals(next.on())) {
            prices.remove(prices.size() - 1);
        }
        prices.add(next);
    }

    /** The moving average over everything that came with a cost. */
    Optional<Paid> average(String item) {
        return latest(averages(item));
    }

    /** The average as it was at the end of every day on which something moved, oldest first. */
    List<Paid> averages(String item) {
        return kept(average, item, this::readAverages);
    }

    private List<Paid> readAverages(String item) {
        MovingAverage moving = new MovingAverage(items.measure(item));
        List<Paid> averages = new ArrayList<>();
        List<LedgerEntry> standing = Standing.of(journal.entries(item));
        for (int i = 0; i < standing.size(); i++) {
            LedgerEntry entry = standing.get(i);
            moving.take(entry);
            LocalDate on = day(entry);
            if (i + 1 == standing.size() || !day(standing.get(i + 1)).equals(on)) {
                moving.price().ifPresent(price -> averages.add(new Paid(price, on)));
            }
        }
        return averages;
    }

    private static Optional<Paid> latest(List<Paid> prices) {
        return prices.isEmpty() ? Optional.empty() : Optional.of(prices.get(prices.size() - 1));
    }

    /** The price of a list that was in force on a day. */
    static Optional<Paid> on(LocalDate day, List<Paid> prices) {
        return prices.stream().filter(paid -> !paid.on().isAfter(day)).reduce((earlier, later) -> later);
    }

    /** What was read before, unless the item has moved or is measured otherwise since. */
    private List<Paid> kept(Map<String, Kept> known, String item, Function<String, List<Paid>> read) {
        long moves = journal.moves(item);
        Optional<Item> measured = items.find(item);
        Kept kept = known.get(item);
        if (kept == null || kept.moves() != moves || !kept.item().equals(measured)) {
            kept = new Kept(moves, measured, List.copyOf(read.apply(item)));
            known.put(item, kept);
        }
        return kept.paid();
    }

    private record Kept(long moves, Optional<Item> item, List<Paid> paid) {}

    private LocalDate day(LedgerEntry entry) {
        return entry.at().atZone(kitchen.house().zone()).toLocalDate();
    }
}
