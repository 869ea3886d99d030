package etamine.kitchen.stock;

import etamine.measures.Money;
import etamine.measures.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * How much of an item there is.
 *
 * @param item the item
 * @param onHand the sum of its lots, in its count unit; negative when more was used than was ever entered
 * @param lots what it consists of, first-expiring first
 * @param value what it is worth at what it cost; empty when no cost is known
 */
public record StockLevel(String item, Quantity onHand, List<Lot> lots, Optional<Money> value) {

    /** Copies the list. */
    public StockLevel {
        lots = List.copyOf(lots);
    }
}
