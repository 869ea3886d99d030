package etamine.inventory.internal;

import etamine.inventory.internal.PaidPrices.Paid;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import java.time.LocalDate;
import java.util.List;
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
        return prices.last(item).map(paid -> quote(item, paid));
    }

    @Override
    public Optional<PriceQuote> quote(String item, LocalDate on) {
        return PaidPrices.on(on, prices.paid(item)).map(paid -> quote(item, paid));
    }

    @Override
    public List<PriceQuote> history(String item) {
        return prices.paid(item).stream().map(paid -> quote(item, paid)).toList();
    }

    private PriceQuote quote(String item, Paid paid) {
        return new PriceQuote(item, paid.price(), id(), "last paid on " + paid.on(), Optional.of(paid.on()));
    }
}
