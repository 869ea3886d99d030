package etamine.inventory.internal;

import etamine.kitchen.cost.Costs;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.price.PriceSource;
import etamine.kitchen.stock.Place;
import etamine.kitchen.stock.Stock;
import etamine.kitchen.stock.StockLevel;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** The shelf from the journal's sums by lot, with values; worked out anew when the book or the day has moved on. */
@Component(service = {Stock.class, LotStock.class})
public final class LotStock implements Stock {
    private final StockJournal journal;
    private final PlaceShelf places;
    private final KnownItems items;
    private final Kitchen kitchen;
    private volatile @Nullable Worked worked;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile List<PriceSource> prices = List.of();

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Costs costs;

    /** Sums that journal by the house's day. */
    @Activate
    public LotStock(
            @Reference StockJournal journal,
            @Reference PlaceShelf places,
            @Reference KnownItems items,
            @Reference Kitchen kitchen) {
        this.journal = journal;
        this.places = places;
        this.items = items;
        this.kitchen = kitchen;
    }

    private record Worked(
            long revision,
            LocalDate day,
            Currency currency,
            Optional<Items> items,
            List<PriceSource> prices,
            Optional<Costs> costs,
            Map<String, ItemStock> stock) {

        Worked with(Map<String, ItemStock> valued) {
            return new Worked(revision, day, currency, items, prices, costs, valued);
        }

        boolean fits(Worked other) {
            return revision == other.revision
                    && day.equals(other.day)
                    && currency.equals(other.currency)
                    && items.equals(other.items)
                    && prices.equals(other.prices)
                    && costs.equals(other.costs);
        }
    }

    /** Every item's stock now, with how it was valued. */
    Map<String, ItemStock> now() {
        Worked wanted = new Worked(
                journal.book().followed(),
                kitchen.today(),
                kitchen.house().currency(),
                items.source(),
                List.copyOf(prices),
                Optional.ofNullable(costs),
                Map.of());
        Worked last = worked;
        if (last != null && last.fits(wanted)) {
            return last.stock();
        }
        Map<String, ItemStock> stock = value(journal.amounts());
        worked = wanted.with(stock);
        return stock;
    }

    /** Every item's stock at an instant, valued at what its lots cost and today's prices where that is not known. */
    Map<String, ItemStock> at(Instant instant) {
        return value(journal.amounts(instant));
    }

    /** The same as it was before anything of that instant. */
    Map<String, ItemStock> before(Instant instant) {
        return value(journal.amountsBefore(instant));
    }

    /** What lies in one place, of the items that do. */
    Map<String, ItemStock> in(String place) {
        Map<String, Map<LotKey, Long>> there = new TreeMap<>();
        journal.amounts().forEach((item, lots) -> {
            Map<LotKey, Long> here = new TreeMap<>(Netting.of(lots));
            here.keySet().removeIf(lot -> !lot.place().equals(place));
            if (!here.isEmpty()) {
                there.put(item, here);
            }
        });
        return value(there);
    }

    private Map<String, ItemStock> value(Map<String, Map<LotKey, Long>> amounts) {
        Currency currency = currency();
        Map<String, ItemStock> stock = new TreeMap<>();
        amounts.forEach((item, lots) -> stock.put(item, ItemStock.of(Netting.of(lots), valuer(item), currency)));
        return Collections.unmodifiableMap(stock);
    }

    /** What values an item's stock now. */
    Valuer valuer(String item) {
        List<PriceSource> ranked = prices.stream()
                .sorted(Comparator.comparingInt(PriceSource::rank))
                .toList();
        return new Valuer(items.measure(item), ranked, Optional.ofNullable(costs));
    }

    Currency currency() {
        return kitchen.house().currency();
    }

    @Override
    public Map<String, StockLevel> levels() {
        return levels(now());
    }

    @Override
    public Map<String, StockLevel> levels(Instant at) {
        return levels(at(at));
    }

    private static Map<String, StockLevel> levels(Map<String, ItemStock> stock) {
        Map<String, StockLevel> levels = new TreeMap<>();
        stock.forEach((item, known) -> levels.put(item, known.level()));
        return levels;
    }

    @Override
    public List<Place> places() {
        return places.inOrder();
    }
}
