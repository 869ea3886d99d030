package etamine.ordering;

import etamine.kitchen.order.SupplierOrder;
import java.nio.file.Path;
import java.util.List;

/**
 * What became of an order that was to be issued.
 *
 * @param order the order now
 * @param files the files written for it; none when it was not issued
 * @param problem why it was not issued; empty when it was
 */
public record IssuedOrder(SupplierOrder order, List<Path> files, String problem) {

    /** Copies the list. */
    public IssuedOrder {
        files = List.copyOf(files);
    }
}
