package etamine.ingredients.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.measures.Conversion;
import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The prices that somebody wrote on ingredients; asked after every other source. */
@Component
public final class WrittenPrices implements PriceSource {
    private static final int RANK = 40;

    private final IngredientShelf shelf;
    private final PastWrittenPrices past;
    private final Kitchen kitchen;

    /** The prices on that shelf. */
    @Activate
    public WrittenPrices(@Reference IngredientShelf shelf, @Reference Kitchen kitchen) {
        this.shelf = shelf;
        this.kitchen = kitchen;
        this.past = new PastWrittenPrices(shelf);
    }

    @Override
    public String id() {
        return "written";
    }

    @Override
    public String label() {
        return "Written price";
    }

    @Override
    public int rank() {
        return RANK;
    }

    @Override
    public Optional<PriceQuote> quote(String id) {
        Item item = shelf.items().get(id);
        return item == null ? Optional.empty() : quote(item, past.since(id, zone()));
    }

    @Override
    public Optional<PriceQuote> quote(String id, LocalDate on) {
        List<PriceQuote> history = history(id);
        return history.stream()
                .filter(quote -> !quote.asOf().orElse(LocalDate.MIN).isAfter(on))
                .reduce((earlier, later) -> later);
    }

    @Override
    public List<PriceQuote> history(String id) {
        Item item = shelf.items().get(id);
        return item == null
                ? List.of()
                : past.prices(id, zone()).stream()
                        .flatMap(past -> quote(item, past.price(), Optional.of(past.on())).stream())
                        .toList();
    }

    private Optional<PriceQuote> quote(Item item, Optional<LocalDate> since) {
        return quote(item, item.writtenPrice(), since);
    }

    private Optional<PriceQuote> quote(Item item, Optional<UnitPrice> written, Optional<LocalDate> since) {
        return written.map(price ->
                new PriceQuote(item.id(), counted(item, price), id(), "price written on " + item.name(), since));
    }

    private ZoneId zone() {
        return kitchen.house().zone();
    }

    /** The price for an amount in the item's own dimension, where its measures allow it. */
    private static UnitPrice counted(Item item, UnitPrice price) {
        if (price.per().unit().isLike(item.countIn())) {
            return price;
        }
        Conversion per = item.converter().convert(price.per(), item.countIn());
        return per instanceof Conversion.Converted found ? new UnitPrice(price.amount(), found.quantity()) : price;
    }
}
