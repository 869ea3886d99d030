package etamine.catalogue.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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
    private final PastOffers past;

    /** Reads the catalogue on the house's day. */
    @Activate
    public OfferPrice(@Reference LiveCatalogue catalogue, @Reference Shelves shelves, @Reference Kitchen kitchen) {
        this.catalogue = catalogue;
        this.kitchen = kitchen;
        this.past = new PastOffers(catalogue, shelves, kitchen);
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

    @Override
    public Optional<PriceQuote> quote(String item, LocalDate on) {
        return past.offers(item, on).stream().findFirst().map(this::quote);
    }

    @Override
    public List<PriceQuote> history(String item) {
        List<PriceQuote> history = new ArrayList<>();
        for (LocalDate day : past.turns(item, kitchen.today())) {
            past.offers(item, day).stream()
                    .findFirst()
                    .map(this::quote)
                    .map(quote -> quote.from(day))
                    .filter(quote -> history.isEmpty()
                            || !history.get(history.size() - 1).price().equals(quote.price()))
                    .ifPresent(history::add);
        }
        return history;
    }

    private PriceQuote quote(Offer offer) {
        UnitPrice price = new UnitPrice(offer.amount(), offer.per().orElseGet(offer.pack()::total));
        String supplier =
                catalogue.supplier(offer.supplier()).map(Supplier::name).orElse(offer.supplier());
        String text = offer.code().isEmpty() ? "offer of " + supplier : "offer " + offer.code() + " of " + supplier;
        return new PriceQuote(offer.item(), price, id(), text, offer.from());
    }
}
