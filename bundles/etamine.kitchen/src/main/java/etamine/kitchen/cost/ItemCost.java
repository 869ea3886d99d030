package etamine.kitchen.cost;

import etamine.measures.UnitPrice;
import java.util.Optional;

/**
 * The cost of an item.
 *
 * @param item the item
 * @param price per unit of its count dimension
 * @param complete false when a price below it is missing, so that it is a lower bound
 * @param source where it comes from, in words
 * @param origin the price source, its day and age; empty for what is made here
 */
public record ItemCost(String item, UnitPrice price, boolean complete, String source, Optional<PriceOrigin> origin) {

    /** A cost of which only words say where it comes from. */
    public ItemCost(String item, UnitPrice price, boolean complete, String source) {
        this(item, price, complete, source, Optional.empty());
    }
}
