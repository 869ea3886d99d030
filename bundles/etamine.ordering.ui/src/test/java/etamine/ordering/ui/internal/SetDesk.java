package etamine.ordering.ui.internal;

import etamine.base.Progress;
import etamine.kitchen.order.OnOrder;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.Orders;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Offer;
import etamine.measures.Money;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import etamine.ordering.IssuedOrder;
import etamine.ordering.OrderDesk;
import etamine.ordering.OrderPlan;
import etamine.ordering.OrderPlan.ExpectedWaste;
import etamine.ordering.OrderPlan.Shortfall;
import etamine.ordering.PlanTerms;
import etamine.storage.Transaction;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A desk and its orders in memory, which notes what it was asked to do. */
final class SetDesk implements OrderDesk, Orders {
    static final Currency EUR = Currency.getInstance("EUR");

    final Map<String, SupplierOrder> orders = new LinkedHashMap<>();
    final List<String> done = new ArrayList<>();

    void order(String id, String deliver, String orderBy, OrderState state) {
        OrderLine line = new OrderLine(
                "cream",
                "D-104",
                2,
                Pack.parse("6 x 1 l"),
                euro("24.60"),
                euro("49.20"),
                List.of("It is needed.", "It is rounded up."));
        orders.put(
                id,
                new SupplierOrder(
                        id,
                        "dairy",
                        LocalDate.parse(deliver),
                        Optional.of(ZonedDateTime.parse(orderBy)),
                        state,
                        List.of(line),
                        euro("49.20"),
                        euro("6.00")));
    }

    static Money euro(String amount) {
        return Money.of(amount, EUR);
    }

    @Override
    public List<SupplierOrder> all() {
        return List.copyOf(orders.values());
    }

    @Override
    public Optional<SupplierOrder> find(String id) {
        return Optional.ofNullable(orders.get(id));
    }

    @Override
    public List<OnOrder> onOrder() {
        return List.of();
    }

    @Override
    public void received(Transaction transaction, String order) {
        done.add("received " + order);
    }

    @Override
    public OrderPlan plan(PlanTerms terms, Progress progress) {
        Shortfall shortfall =
                new Shortfall("cream", terms.from(), Quantity.parse("1.5 l"), List.of("Nobody comes.", "Sorry."));
        ExpectedWaste waste = new ExpectedWaste(
                "herbs", terms.from().plusDays(1), Quantity.parse("40 g"), Optional.empty(), "It is left.");
        return new OrderPlan(terms, List.of(), List.of(shortfall), List.of(waste), List.of("A note."), euro("0"));
    }

    @Override
    public List<SupplierOrder> draft(OrderPlan plan) {
        done.add("draft from " + plan.terms().from());
        return List.of();
    }

    @Override
    public void setPacks(String order, OrderLine line, long packs) {
        done.add("set " + order + " " + line.code() + " " + packs);
    }

    @Override
    public void addLine(String order, Offer offer, long packs) {
        done.add("add " + order + " " + offer.code() + " " + packs);
    }

    @Override
    public void discard(String order) {
        done.add("discard " + order);
    }

    @Override
    public void cancel(String order) {
        done.add("cancel " + order);
    }

    @Override
    public List<IssuedOrder> issue(List<String> ids, Path folder) {
        return ids.stream()
                .map(id -> id.startsWith("late")
                        ? new IssuedOrder(orders.get(id), List.of(), "The cut-off of " + id + " has passed.")
                        : new IssuedOrder(
                                orders.get(id), List.of(folder.resolve(id + ".csv"), folder.resolve(id + ".pdf")), ""))
                .toList();
    }
}
