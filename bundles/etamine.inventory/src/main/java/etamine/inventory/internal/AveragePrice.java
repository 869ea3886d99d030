package etamine.inventory.internal;

import etamine.inventory.internal.PaidPrices.Paid;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The moving average of what came with a cost. */
@Component
public final class AveragePrice implements PriceSource {
    private static final int RANK = 30;

    private final PaidPrices prices;

    /** Asks the ledger. */
    @Activate
    public AveragePrice(@Reference PaidPrices prices) {
        this.prices = prices;
    }

    @Override
    public String id() {
        return "average";
    }

    @Override
    public String label() {
        return "Moving average";
    }

    @Override
    public int rank() {
        return RANK;
    }

    @Override
    public Optional<PriceQuote> quote(String item) {
        return prices.average(item).map(paid -> quote(item, paid));
    }

    @Override
    public Optional<PriceQuote> quote(String item, LocalDate on) {
        return PaidPrices.on(on, prices.averages(item)).map(paid -> quote(item, paid));
    }

    @Override
    public List<PriceQuote> history(String item) {
        List<PriceQuote> history = new ArrayList<>();
        for (Paid paid : prices.averages(item)) {
            if (history.isEmpty() || !history.get(history.size() - 1).price().equals(paid.price())) {
                history.add(quote(item, paid));
            }
        }
        return history;
    }

    private PriceQuote quote(String item, Paid paid) {
        return new PriceQuote(item, paid.price(), id(), "moving average up to " + paid.on(), Optional.of(paid.on()));
    }
}
