package etamine.kitchen.recipe;

import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.util.Optional;

/**
 * One thing a recipe gives.
 *
 * @param item the item made
 * @param quantity how much one batch gives
 * @param credit the value it takes out of the batch's cost; without one it shares what remains
 * @param marketValue what it would cost to buy; when everything that shares the remainder has one, the remainder is
 *     shared by market value, else by weight
 */
public record Make(String item, Quantity quantity, Optional<UnitPrice> credit, Optional<UnitPrice> marketValue) {

    /** A thing made without a market value. */
    public Make(String item, Quantity quantity, Optional<UnitPrice> credit) {
        this(item, quantity, credit, Optional.empty());
    }

    /** The same in another quantity. */
    public Make withQuantity(Quantity changed) {
        return new Make(item, changed, credit, marketValue);
    }
}
