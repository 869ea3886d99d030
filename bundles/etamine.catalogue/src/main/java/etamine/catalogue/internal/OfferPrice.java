package etamine.catalogue.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.UnitPrice;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The cheapest offer per unit that holds today, at its price for a single pack. */
@Component
public final class OfferPrice implements PriceSource {
    private static final int RANK = 10;

    private final LiveCatalogue catalogue;
    private final Kitchen kitchen;

    /** Reads the catalogue on the house's day. */
    @Activate
    public OfferPrice(@Reference LiveCatalogue catalogue, @Reference Kitchen kitchen) {
        this.catalogue = catalogue;
        this.kitchen = kitchen;
    }

    @Override
    public String id() {
        return "offer";
    }

    @Override
    public String label() {
        return "Current offer";
    }

    @Override
    public int rank() {
        return RANK;
    }

    @Override
    public Optional<PriceQuote> quote(String item) {
        return catalogue.offersFor(item, kitchen.today()).stream().findFirst().map(this::quote);
    }

    private PriceQuote quote(Offer offer) {
        UnitPrice price = new UnitPrice(offer.amount(), offer.per().orElseGet(offer.pack()::total));
        String supplier =
                catalogue.supplier(offer.supplier()).map(Supplier::name).orElse(offer.supplier());
        String text = offer.code().isEmpty() ? "offer of " + supplier : "offer " + offer.code() + " of " + supplier;
        return new PriceQuote(offer.item(), price, id(), text, offer.from());
    }
}
