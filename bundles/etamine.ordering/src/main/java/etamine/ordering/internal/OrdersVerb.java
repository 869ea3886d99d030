package etamine.ordering.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.ordering.OrderDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code orders}: lists the orders there are, or shows, changes, drops or calls off one. */
@Component
public final class OrdersVerb implements Verb {
    private static final int SETTING = 3;

    private final OrderDesk desk;
    private final ShelfOrders orders;
    private final Neighbours neighbours;

    /** The verb of the open book. */
    @Activate
    public OrdersVerb(@Reference OrderDesk desk, @Reference ShelfOrders orders, @Reference Neighbours neighbours) {
        this.desk = desk;
        this.orders = orders;
        this.neighbours = neighbours;
    }

    @Override
    public VerbUsage usage() {
        String summary = "orders there are; with an id one of them; with an article number and packs, changes a draft";
        return VerbUsage.of("orders", summary, "[ID]", "[CODE]", "[PACKS]")
                .with("--discard", "", "drop the draft")
                .with("--cancel", "", "note that the sent order was called off");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<String> given = call.arguments();
        if (given.isEmpty()) {
            return list();
        }
        SupplierOrder order = orders.find(given.get(0))
                .orElseThrow(() -> VerbException.wrongCall("There is no order “" + given.get(0) + "”."));
        act(call, order);
        return orders.find(order.id())
                .map(this::show)
                .orElseGet(() -> Report.done(Values.map("orders", List.of()), List.of(order.id() + " is dropped.")));
    }

    private void act(VerbCall call, SupplierOrder order) throws VerbException {
        List<String> given = call.arguments();
        if (call.has("--discard")) {
            desk.discard(order.id());
        } else if (call.has("--cancel")) {
            desk.cancel(order.id());
        } else if (given.size() == SETTING) {
            desk.setPacks(order.id(), line(order, given.get(1)), packs(given.get(2)));
        } else if (given.size() == 2) {
            throw VerbException.wrongCall("Give the number of packs after the article number; 0 takes the line off.");
        }
    }

    private static OrderLine line(SupplierOrder order, String codeOrItem) throws VerbException {
        return order.lines().stream()
                .filter(line -> line.code().equals(codeOrItem))
                .findFirst()
                .or(() -> order.lines().stream()
                        .filter(line -> line.item().equals(codeOrItem))
                        .findFirst())
                .orElseThrow(() -> VerbException.wrongCall(
                        "Order " + order.id() + " has no line of article or item “" + codeOrItem + "”."));
    }

    private static long packs(String text) throws VerbException {
        if (!text.matches("[0-9]{1,6}")) {
            throw VerbException.wrongCall("“" + text + "” is not a number of packs; write digits such as 3.");
        }
        return Long.parseLong(text);
    }

    private Report list() {
        TextTable table = new TextTable("Order", "Supplier", "Delivery", "State", ">Lines", ">Goods", ">Fee");
        List<Map<String, Object>> json = new ArrayList<>();
        for (SupplierOrder order : orders.all()) {
            json.add(json(order));
            table.row(
                    order.id(),
                    neighbours.supplierName(order.supplier()),
                    order.deliver().toString(),
                    word(order.state()),
                    String.valueOf(order.lines().size()),
                    order.goods().toString(),
                    order.fee().toString());
        }
        return Report.done(
                Values.map("orders", json), json.isEmpty() ? List.of("There are no orders.") : table.lines());
    }

    private Report show(SupplierOrder order) {
        TextTable table = new TextTable("Item", "Article", ">Packs", "Pack", ">Price", ">Amount");
        order.lines()
                .forEach(line -> table.row(
                        neighbours.itemName(line.item()),
                        line.code(),
                        String.valueOf(line.packs()),
                        line.pack().toString(),
                        line.packPrice().rounded().toString(),
                        line.amount().toString()));
        List<String> lines = new ArrayList<>();
        lines.add(order.id() + ", " + neighbours.supplierName(order.supplier()) + ", delivery " + order.deliver() + ", "
                + word(order.state()));
        lines.addAll(table.lines());
        lines.add("Goods " + order.goods() + ", fee " + order.fee());
        return Report.done(Values.map("orders", List.of(json(order))), lines);
    }

    static Map<String, Object> json(SupplierOrder order) {
        return Values.map(
                "id", order.id(),
                "supplier", order.supplier(),
                "deliver", order.deliver().toString(),
                "state", word(order.state()),
                "goods", order.goods().toString(),
                "fee", order.fee().toString(),
                "lines", order.lines().stream().map(PlanReport::json).toList());
    }

    static String word(OrderState state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    static String lines(SupplierOrder order) {
        return order.lines().size() == 1 ? "1 line" : order.lines().size() + " lines";
    }
}
