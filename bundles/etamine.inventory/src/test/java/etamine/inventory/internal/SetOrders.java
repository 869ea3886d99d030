package etamine.inventory.internal;

import etamine.kitchen.order.OnOrder;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.Orders;
import etamine.kitchen.order.SupplierOrder;
import etamine.measures.Quantity;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Orders as a test sets them; one that was received is noted on a shelf of its own.
 *
 * @param all the orders
 * @param onOrder what is on its way
 */
record SetOrders(List<SupplierOrder> all, List<OnOrder> onOrder) implements Orders {
    static final String NOTED = "noted";

    static SetOrders coming(String item, String quantity) {
        return new SetOrders(
                List.of(),
                List.of(new OnOrder("dairy", item, 1, Quantity.parse(quantity), LocalDate.of(2026, 11, 27))));
    }

    @Override
    public Optional<SupplierOrder> find(String id) {
        return all.stream().filter(order -> order.id().equals(id)).findFirst();
    }

    @Override
    public void received(Transaction transaction, String order) {
        transaction.save(NOTED, order, Document.ANY, "{\"state\":\"" + OrderState.RECEIVED + "\"}");
    }
}
