package etamine.inventory;

import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Something put on a shelf.
 *
 * @param item the item
 * @param place where it goes; empty for where the item usually is
 * @param quantity how much, in any unit the item has a measure for
 * @param useBy the last day as marked
 * @param unitCost what it cost, without tax
 * @param lot the mark on it; empty when none
 */
public record Incoming(
        String item,
        String place,
        Quantity quantity,
        Optional<LocalDate> useBy,
        Optional<UnitPrice> unitCost,
        String lot) {

    /** Something without mark, date or price. */
    public static Incoming of(String item, String place, Quantity quantity) {
        return new Incoming(item, place, quantity, Optional.empty(), Optional.empty(), "");
    }
}
