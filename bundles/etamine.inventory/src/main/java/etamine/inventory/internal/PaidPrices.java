package etamine.inventory.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.UnitPrice;
import etamine.storage.LedgerEntry;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Prices that the ledger itself knows: the last one paid, and the moving average of what is on the shelf. */
@Component(service = PaidPrices.class)
public final class PaidPrices {
    private final StockJournal journal;
    private final KnownItems items;
    private final Kitchen kitchen;

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
        List<LedgerEntry> standing = Standing.of(journal.entries(item));
        for (int i = standing.size() - 1; i >= 0; i--) {
            LedgerEntry entry = standing.get(i);
            Optional<UnitPrice> cost = LotKey.price(entry.keys().get("unit_cost"));
            if (Draft.kind(entry.keys().get("kind")) == MovementKind.RECEIVED && cost.isPresent()) {
                return Optional.of(new Paid(cost.get(), day(entry)));
            }
        }
        return Optional.empty();
    }

    /** The moving average over everything that came with a cost. */
    Optional<Paid> average(String item) {
        MovingAverage average = new MovingAverage(items.measure(item));
        List<LedgerEntry> standing = Standing.of(journal.entries(item));
        standing.forEach(average::take);
        Optional<LocalDate> on =
                standing.isEmpty() ? Optional.empty() : Optional.of(day(standing.get(standing.size() - 1)));
        return on.flatMap(day -> average.price().map(price -> new Paid(price, day)));
    }

    private LocalDate day(LedgerEntry entry) {
        return entry.at().atZone(kitchen.house().zone()).toLocalDate();
    }
}
