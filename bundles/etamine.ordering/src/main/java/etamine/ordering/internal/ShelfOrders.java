package etamine.ordering.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.Kept;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.order.OnOrder;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.Orders;
import etamine.kitchen.order.SupplierOrder;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.ordering.internal.OnOrderForm.Coming;
import etamine.storage.Book;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import etamine.storage.Transaction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/**
 * The orders on a shelf of the book, and what is on its way without one. The latter is shown as a sent order per
 * supplier and day, as far as the catalogue knows the packs, so that it can be received like any other.
 */
@Component(service = {Orders.class, ShelfOrders.class})
public final class ShelfOrders implements Orders {
    private final Neighbours neighbours;
    private final LiveShelf<Kept<SupplierOrder>> orders;
    private final LiveShelf<Kept<Coming>> coming;

    /** Follows the open book. */
    @Activate
    public ShelfOrders(@Reference Book book, @Reference Kitchen kitchen, @Reference Neighbours neighbours) {
        this.neighbours = neighbours;
        book.prepare(new ModuleFormat(Names.MODULE, 1, List.of(), List.of()));
        orders = new LiveShelf<>(book, Names.ORDERS, Kept.codec(new OrderForm(kitchen)::read));
        coming = new LiveShelf<>(book, Names.ON_ORDER, Kept.codec(OnOrderForm::read));
    }

    /** Lets go of the book. */
    @Deactivate
    public void close() {
        orders.close();
        coming.close();
    }

    @Override
    public List<SupplierOrder> all() {
        List<SupplierOrder> all = new ArrayList<>();
        orders.values().values().forEach(kept -> all.add(kept.value()));
        all.addAll(comingOrders().all());
        all.sort(Comparator.comparing(SupplierOrder::deliver).reversed().thenComparing(SupplierOrder::id));
        return all;
    }

    @Override
    public Optional<SupplierOrder> find(String id) {
        return orders.get(id).map(Kept::value).or(() -> comingOrders().find(id));
    }

    @Override
    public List<OnOrder> onOrder() {
        List<OnOrder> all = new ArrayList<>();
        for (SupplierOrder order : all()) {
            if (order.state() == OrderState.SENT) {
                order.lines().forEach(line -> onOrder(order, line).ifPresent(all::add));
            }
        }
        return all;
    }

    private Optional<OnOrder> onOrder(SupplierOrder order, OrderLine line) {
        Quantity quantity = line.pack().total().times(Ratio.of(line.packs()));
        return Counting.count(neighbours.item(line.item()), quantity) instanceof Conversion.Converted counted
                ? Optional.of(
                        new OnOrder(order.supplier(), line.item(), line.packs(), counted.quantity(), order.deliver()))
                : Optional.empty();
    }

    @Override
    public void received(Transaction transaction, String id) {
        if (orders.get(id).isPresent()) {
            move(transaction, id, OrderState.RECEIVED);
            return;
        }
        coming.values().forEach((document, kept) -> {
            if (kept.value().order().equals(id)) {
                coming.remove(transaction, document);
            }
        });
    }

    /** Gives an order another state. */
    void move(Transaction transaction, String id, OrderState state) {
        orders.get(id)
                .map(Kept::value)
                .ifPresent(order -> save(
                        transaction,
                        new SupplierOrder(
                                order.id(),
                                order.supplier(),
                                order.deliver(),
                                order.orderBy(),
                                state,
                                order.lines(),
                                order.goods(),
                                order.fee())));
    }

    /** Saves an order. */
    void save(Transaction transaction, SupplierOrder order) {
        ObjectNode node =
                orders.get(order.id()).map(kept -> kept.json().deepCopy()).orElseGet(EntryJson::empty);
        orders.save(transaction, order.id(), new Kept<>(order, OrderForm.write(node, order)));
    }

    /** Takes an order off the shelf. */
    void remove(Transaction transaction, String id) {
        orders.remove(transaction, id);
    }

    /** What is on its way without an order and cannot be counted, since no offer says what a pack holds. */
    List<Coming> uncounted() {
        return comingOrders().unknown();
    }

    /** Documents that could not be read: {@code shelf/id} to reason. */
    Map<String, String> unreadable() {
        Map<String, String> all = new TreeMap<>();
        orders.unreadable().forEach((id, why) -> all.put(Names.ORDERS + "/" + id, why));
        coming.unreadable().forEach((id, why) -> all.put(Names.ON_ORDER + "/" + id, why));
        return all;
    }

    private ComingOrders comingOrders() {
        return new ComingOrders(
                coming.values().values().stream().map(Kept::value).toList(), neighbours.catalogue());
    }
}
