package etamine.inventory.internal;

import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What the latest receipt with a price cost. */
@Component
public final class LastPaidPrice implements PriceSource {
    private static final int RANK = 20;

    private final PaidPrices prices;

    /** Asks the ledger. */
    @Activate
    public LastPaidPrice(@Reference PaidPrices prices) {
        this.prices = prices;
    }

    @Override
    public String id() {
        return "last-paid";
    }

    @Override
    public String label() {
        return "Last paid";
    }

    @Override
    public int rank() {
        return RANK;
    }

    @Override
    public Optional<PriceQuote> quote(String item) {
        return prices.last(item)
                .map(paid ->
                        new PriceQuote(item, paid.price(), id(), "last paid on " + paid.on(), Optional.of(paid.on())));
    }
}
