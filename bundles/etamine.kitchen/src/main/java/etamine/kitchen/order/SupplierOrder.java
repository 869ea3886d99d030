package etamine.kitchen.order;

import etamine.measures.Money;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * An order to one supplier for one delivery.
 *
 * @param id its number
 * @param supplier the supplier
 * @param deliver the delivery day
 * @param orderBy the cut-off
 * @param state how far it is
 * @param lines the lines
 * @param goods sum of the lines
 * @param fee the delivery fee
 */
public record SupplierOrder(
        String id,
        String supplier,
        LocalDate deliver,
        Optional<ZonedDateTime> orderBy,
        OrderState state,
        List<OrderLine> lines,
        Money goods,
        Money fee) {

    /** Copies the list. */
    public SupplierOrder {
        lines = List.copyOf(lines);
    }
}
