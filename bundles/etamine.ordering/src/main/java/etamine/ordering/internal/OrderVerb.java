package etamine.ordering.internal;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.measures.QuantityText;
import etamine.ordering.IssuedOrder;
import etamine.ordering.OrderDesk;
import etamine.ordering.OrderPlan;
import etamine.ordering.OrderPlan.Shortfall;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code order}: saves the plan as drafts, and issues drafts as files for the suppliers. */
@Component
public final class OrderVerb implements Verb {
    private static final String ISSUE = "--issue";

    private final OrderDesk desk;
    private final ShelfOrders orders;
    private final Kitchen kitchen;
    private final Neighbours neighbours;

    /** The verb of the open book. */
    @Activate
    public OrderVerb(
            @Reference OrderDesk desk,
            @Reference ShelfOrders orders,
            @Reference Kitchen kitchen,
            @Reference Neighbours neighbours) {
        this.desk = desk;
        this.orders = orders;
        this.kitchen = kitchen;
        this.neighbours = neighbours;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("order", "drafts orders from the plan; with --issue writes the files and marks them sent")
                .with("--issue", "", "issue the drafts there are; when there are none, plan first")
                .with("--folder", "DIR", "where the files go; the folder orders when not given")
                .with("--from", "DATE", "first day planned; today when not given")
                .with("--days", "N", "how many days are planned; 7 when not given")
                .with("--ubl", "", "not in this version");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.has("--ubl")) {
            throw VerbException.wrongCall("A later version writes UBL orders; this one writes CSV and PDF.");
        }
        List<SupplierOrder> drafts = drafts();
        List<Shortfall> shortfalls = List.of();
        if (drafts.isEmpty() || !call.has(ISSUE)) {
            OrderPlan plan = desk.plan(Values.terms(call, kitchen), call.progress());
            drafts = desk.draft(plan);
            shortfalls = plan.shortfalls();
        }
        List<IssuedOrder> results = call.has(ISSUE)
                ? issue(drafts, call.file(call.option("--folder").orElse("orders")))
                : drafts.stream()
                        .map(draft -> new IssuedOrder(draft, List.of(), ""))
                        .toList();
        return report(results, shortfalls);
    }

    private List<SupplierOrder> drafts() {
        return orders.all().stream()
                .filter(order -> order.state() == OrderState.DRAFT)
                .sorted(Comparator.comparing(SupplierOrder::deliver).thenComparing(SupplierOrder::id))
                .toList();
    }

    private List<IssuedOrder> issue(List<SupplierOrder> drafts, Path folder) throws VerbException {
        try {
            return desk.issue(drafts.stream().map(SupplierOrder::id).toList(), folder);
        } catch (IOException failed) {
            throw VerbException.rejected("The orders could not be written into " + folder + " (" + failed.getMessage()
                    + "); none is marked sent. Choose another folder with --folder.");
        }
    }

    private Report report(List<IssuedOrder> results, List<Shortfall> shortfalls) {
        List<Map<String, Object>> json = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (IssuedOrder result : results) {
            json.add(json(result));
            lines.add(line(result.order()));
            result.files().forEach(file -> lines.add("    " + file));
            if (!result.problem().isEmpty()) {
                lines.add("    " + result.problem());
            }
        }
        if (results.isEmpty()) {
            lines.add("Nothing has to be ordered.");
        }
        shortfalls.forEach(shortfall -> lines.add("Short: " + neighbours.itemName(shortfall.item()) + ", "
                + QuantityText.format(shortfall.quantity(), kitchen.house().measures()) + ". "
                + String.join(" ", shortfall.why())));
        boolean look = !shortfalls.isEmpty()
                || results.stream().anyMatch(result -> !result.problem().isEmpty());
        List<String> missing = shortfalls.stream().map(Shortfall::item).toList();
        return new Report(look ? Outcome.LOOK : Outcome.DONE, Values.map("orders", json, "shortfalls", missing), lines);
    }

    private static Map<String, Object> json(IssuedOrder result) {
        Map<String, Object> json = OrdersVerb.json(result.order());
        json.put("files", result.files().stream().map(Path::toString).toList());
        if (!result.problem().isEmpty()) {
            json.put("problem", result.problem());
        }
        return json;
    }

    private String line(SupplierOrder order) {
        return order.id() + "  " + neighbours.supplierName(order.supplier()) + ", delivery " + order.deliver() + ": "
                + OrdersVerb.lines(order) + ", " + order.goods().plus(order.fee()) + " "
                + order.goods().currency() + ", " + OrdersVerb.word(order.state());
    }
}
