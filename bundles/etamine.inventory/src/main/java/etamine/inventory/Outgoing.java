package etamine.inventory;

import etamine.measures.Quantity;
import java.util.Optional;

/**
 * Something taken from the shelf; the lots that expire first are taken first.
 *
 * @param item the item
 * @param quantity how much, in any unit the item has a measure for
 * @param place from where; empty for every place
 * @param reason why, in the kitchen's words; empty when not said
 */
public record Outgoing(String item, Quantity quantity, Optional<String> place, String reason) {}
