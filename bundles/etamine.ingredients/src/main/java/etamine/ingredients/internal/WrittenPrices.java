package etamine.ingredients.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.measures.Conversion;
import etamine.measures.UnitPrice;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The prices that somebody wrote on ingredients; asked after every other source. */
@Component
public final class WrittenPrices implements PriceSource {
    private static final int RANK = 40;

    private final IngredientShelf shelf;

    /** The prices on that shelf. */
    @Activate
    public WrittenPrices(@Reference IngredientShelf shelf) {
        this.shelf = shelf;
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
        return Optional.ofNullable(shelf.items().get(id))
                .flatMap(item -> item.writtenPrice()
                        .map(price -> new PriceQuote(
                                id, counted(item, price), id(), "price written on " + item.name(), Optional.empty())));
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
