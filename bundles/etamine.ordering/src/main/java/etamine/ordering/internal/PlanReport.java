package etamine.ordering.internal;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.kitchen.order.OrderLine;
import etamine.measures.MeasureStyle;
import etamine.measures.Money;
import etamine.measures.QuantityText;
import etamine.ordering.OrderPlan;
import etamine.ordering.OrderPlan.ExpectedWaste;
import etamine.ordering.OrderPlan.PlannedOrder;
import etamine.ordering.OrderPlan.Shortfall;
import etamine.ordering.internal.plan.PlanWords;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shows a plan to machines and to people; what is not known stands as an empty optional, which the console writes as
 * null.
 */
final class PlanReport {
    private final OrderPlan plan;
    private final Neighbours neighbours;
    private final MeasureStyle style;

    PlanReport(OrderPlan plan, Neighbours neighbours, MeasureStyle style) {
        this.plan = plan;
        this.neighbours = neighbours;
        this.style = style;
    }

    Report report() {
        Outcome outcome = plan.shortfalls().isEmpty() ? Outcome.DONE : Outcome.LOOK;
        return new Report(outcome, json(), lines());
    }

    private Map<String, Object> json() {
        return Values.map(
                "from", plan.terms().from().toString(),
                "days", plan.terms().days(),
                "total", plan.total().toString(),
                "bound", Optional.empty(),
                "gapPercent", Optional.empty(),
                "method", "par",
                "byHand", Values.map("total", plan.total().toString()),
                "orders", plan.orders().stream().map(PlanReport::json).toList(),
                "shortfalls", plan.shortfalls().stream().map(PlanReport::json).toList(),
                "expectedWaste",
                        plan.expectedWaste().stream().map(PlanReport::json).toList(),
                "notes", plan.notes());
    }

    private static Map<String, Object> json(PlannedOrder order) {
        return Values.map(
                "supplier", order.delivery().supplier(),
                "deliver", order.delivery().day().toString(),
                "orderBy",
                        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                                order.delivery().orderBy()),
                "goods", order.goods().toString(),
                "fee", order.fee().toString(),
                "lines", order.lines().stream().map(PlanReport::json).toList());
    }

    static Map<String, Object> json(OrderLine line) {
        return Values.map(
                "item", line.item(),
                "code", line.code(),
                "packs", line.packs(),
                "pack", line.pack().toString(),
                "price", line.packPrice().toString(),
                "amount", line.amount().toString(),
                "why", line.why());
    }

    private static Map<String, Object> json(Shortfall shortfall) {
        return Values.map(
                "item", shortfall.item(),
                "date", shortfall.day().toString(),
                "quantity", shortfall.quantity().toString(),
                "why", shortfall.why());
    }

    private static Map<String, Object> json(ExpectedWaste waste) {
        return Values.map(
                "item", waste.item(),
                "date", waste.day().toString(),
                "quantity", waste.quantity().toString(),
                "value", waste.value().map(Money::toString),
                "why", waste.why());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        plan.orders().forEach(order -> addOrder(lines, order));
        if (plan.orders().isEmpty()) {
            lines.add("Nothing has to be ordered.");
        }
        addShortfalls(lines);
        addWaste(lines);
        plan.notes().forEach(note -> lines.add("Note: " + note));
        lines.add("Total " + plan.total() + " " + plan.total().currency());
        return lines;
    }

    private void addOrder(List<String> lines, PlannedOrder order) {
        lines.add(neighbours.supplierName(order.delivery().supplier()) + ", delivery "
                + PlanWords.day(order.delivery().day()) + ", order by "
                + DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")
                        .format(order.delivery().orderBy()) + ": goods "
                + order.goods() + ", fee " + order.fee());
        TextTable table = new TextTable("  Item", "Article", ">Packs", "Pack", ">Price", ">Amount");
        order.lines()
                .forEach(line -> table.row(
                        "  " + neighbours.itemName(line.item()),
                        line.code(),
                        String.valueOf(line.packs()),
                        line.pack().toString(),
                        line.packPrice().rounded().toString(),
                        line.amount().toString()));
        List<String> rows = table.lines();
        lines.add(rows.get(0));
        for (int i = 0; i < order.lines().size(); i++) {
            lines.add(rows.get(i + 1));
            order.lines().get(i).why().forEach(why -> lines.add("      " + why));
        }
        lines.add("");
    }

    private void addShortfalls(List<String> lines) {
        for (Shortfall shortfall : plan.shortfalls()) {
            lines.add("Short: " + neighbours.itemName(shortfall.item()) + ", "
                    + QuantityText.format(shortfall.quantity(), style) + " from "
                    + PlanWords.day(shortfall.day()) + ". " + String.join(" ", shortfall.why()));
        }
    }

    private void addWaste(List<String> lines) {
        for (ExpectedWaste waste : plan.expectedWaste()) {
            lines.add("Waste: " + neighbours.itemName(waste.item()) + ", "
                    + QuantityText.format(waste.quantity(), style) + " on "
                    + PlanWords.day(waste.day()) + ". " + waste.why());
        }
    }
}
