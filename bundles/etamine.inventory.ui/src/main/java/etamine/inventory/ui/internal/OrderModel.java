package etamine.inventory.ui.internal;

import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.Orders;
import etamine.kitchen.order.SupplierOrder;
import etamine.widgets.Choice;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Orders that can come in, without widgets. */
final class OrderModel {
    private final StockModel stock;
    private final Supplier<Optional<Orders>> orders;

    OrderModel(StockModel stock, Supplier<Optional<Orders>> orders) {
        this.stock = stock;
        this.orders = orders;
    }

    /** Orders that were sent or drawn up and have not come. */
    List<Choice> awaited() {
        return orders.get().map(Orders::all).orElse(List.of()).stream()
                .filter(order -> order.state() == OrderState.SENT || order.state() == OrderState.DRAFT)
                .sorted(Comparator.comparing(SupplierOrder::deliver))
                .map(order -> new Choice(order.id(), label(order)))
                .toList();
    }

    private static String label(SupplierOrder order) {
        return order.deliver() + " " + order.supplier() + ", order " + order.id()
                + (order.state() == OrderState.DRAFT ? " (draft)" : "");
    }

    /**
     * One line to check off.
     *
     * @param item the item
     * @param label what was ordered, in words
     * @param packs how many packs
     */
    record Line(String item, String label, long packs) {}

    List<Line> lines(String order) {
        return orders.get().flatMap(known -> known.find(order)).map(SupplierOrder::lines).orElse(List.of()).stream()
                .map(this::line)
                .toList();
    }

    private Line line(OrderLine line) {
        String name = stock.itemChoices().stream()
                .filter(choice -> choice.id().equals(line.item()))
                .map(Choice::label)
                .findFirst()
                .orElse(line.item());
        return new Line(
                line.item(),
                name + ", " + line.packs() + (line.packs() == 1 ? " pack of " : " packs of ") + line.pack(),
                line.packs());
    }

    /** Receives an order less the packs that did not come; answers how many lots came. */
    int receive(String order, Map<String, Long> shortPacks, Optional<String> place) {
        Map<String, Long> missing = new LinkedHashMap<>(shortPacks);
        missing.values().removeIf(packs -> packs == 0);
        return stock.room().receiveOrder(order, missing, place).size();
    }
}
