package etamine.inventory;

import etamine.measures.Quantity;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What somebody counted of an item in a place.
 *
 * @param item the item
 * @param place the place
 * @param quantity what is there, in any unit the item has a measure for; may be zero
 * @param useBy the marked day of the lot counted; empty for all that no other line of the item and place names
 * @param lot the mark of the lot counted; empty when none
 */
public record CountLine(String item, String place, Quantity quantity, Optional<LocalDate> useBy, String lot) {}
