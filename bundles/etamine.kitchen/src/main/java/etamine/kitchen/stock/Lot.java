package etamine.kitchen.stock;

import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Some of an item that came together.
 *
 * @param item the item
 * @param place where it lies
 * @param lot its identifier; empty for what is not told apart
 * @param quantity how much is left
 * @param useBy the last day it may be used, as marked
 * @param unitCost what it cost
 */
public record Lot(
        String item,
        String place,
        String lot,
        Quantity quantity,
        Optional<LocalDate> useBy,
        Optional<UnitPrice> unitCost) {}
