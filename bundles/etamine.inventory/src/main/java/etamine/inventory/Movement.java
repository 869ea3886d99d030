package etamine.inventory;

import etamine.kitchen.stock.MovementKind;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One entry of the stock ledger.
 *
 * @param id unique in the book
 * @param at when it happened
 * @param kind by which door it came or went
 * @param item the item
 * @param place where
 * @param lot the lot's mark; empty when it has none
 * @param quantity more than zero for what came, less for what went
 * @param useBy the lot's last day as marked
 * @param unitCost what the lot cost
 * @param note the reason, order, supplier or recipe it belongs to, in words; empty when none
 * @param reverses the movement it takes back
 * @param reversed whether it was taken back itself
 */
public record Movement(
        String id,
        Instant at,
        MovementKind kind,
        String item,
        String place,
        String lot,
        Quantity quantity,
        Optional<LocalDate> useBy,
        Optional<UnitPrice> unitCost,
        String note,
        Optional<String> reverses,
        boolean reversed) {}
