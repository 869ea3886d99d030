package etamine.ordering.internal;

import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.Offer;
import etamine.measures.Money;
import etamine.measures.Ratio;
import etamine.ordering.internal.OnOrderForm.Coming;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What is on its way without an order in the book, put together by supplier and day. */
final class ComingOrders {
    private final List<SupplierOrder> orders = new ArrayList<>();
    private final List<Coming> unknown = new ArrayList<>();
    private final Optional<Catalogue> catalogue;

    ComingOrders(List<Coming> coming, Optional<Catalogue> catalogue) {
        this.catalogue = catalogue;
        Map<String, List<Coming>> groups = new TreeMap<>();
        coming.forEach(line ->
                groups.computeIfAbsent(line.order(), id -> new ArrayList<>()).add(line));
        groups.forEach(this::add);
    }

    List<SupplierOrder> all() {
        return orders;
    }

    Optional<SupplierOrder> find(String id) {
        return orders.stream().filter(order -> order.id().equals(id)).findFirst();
    }

    /** Lines of which no offer says what a pack holds. */
    List<Coming> unknown() {
        return unknown;
    }

    /** The article number of a line that does not say it, by the offer it is counted by; empty when none has one. */
    Optional<String> code(Coming coming) {
        return catalogue.flatMap(known -> offer(known, coming)).map(Offer::code).filter(code -> !code.isEmpty());
    }

    private void add(String id, List<Coming> group) {
        List<OrderLine> lines = new ArrayList<>();
        for (Coming coming : group) {
            Optional<OrderLine> line = line(coming);
            line.ifPresentOrElse(lines::add, () -> unknown.add(coming));
        }
        if (!lines.isEmpty()) {
            Currency currency = lines.get(0).amount().currency();
            Coming first = group.get(0);
            orders.add(new SupplierOrder(
                    id,
                    first.supplier(),
                    first.deliver(),
                    Optional.empty(),
                    OrderState.SENT,
                    lines,
                    OrderForm.goods(lines, currency),
                    Money.zero(currency)));
        }
    }

    private Optional<OrderLine> line(Coming coming) {
        return catalogue.flatMap(known -> offer(known, coming)
                .flatMap(offer -> known.packPrice(offer, coming.packs()).map(price -> line(coming, offer, price))));
    }

    private static OrderLine line(Coming coming, Offer offer, Money price) {
        Money amount = price.times(Ratio.of(coming.packs())).rounded();
        return new OrderLine(coming.item(), offer.code(), coming.packs(), offer.pack(), price, amount, List.of());
    }

    private static Optional<Offer> offer(Catalogue catalogue, Coming coming) {
        return catalogue.offersFor(coming.item(), coming.deliver()).stream()
                .filter(offer -> offer.supplier().equals(coming.supplier()))
                .filter(offer -> coming.code().isEmpty() || offer.code().equals(coming.code()))
                .findFirst();
    }
}
