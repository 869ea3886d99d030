package etamine.kitchen.price;

import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What somebody says an item costs.
 *
 * @param item the item
 * @param price the price, without tax, per a quantity as purchased
 * @param source the {@link PriceSource#id} it comes from
 * @param text where exactly, such as {@code offer D-104 of the dairy}
 * @param asOf since when it holds
 */
public record PriceQuote(String item, UnitPrice price, String source, String text, Optional<LocalDate> asOf) {

    /** The same quote, holding since another day. */
    public PriceQuote from(LocalDate day) {
        return new PriceQuote(item, price, source, text, Optional.of(day));
    }
}
