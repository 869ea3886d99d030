package etamine.costing.internal.live;

import etamine.base.Subject;
import etamine.costing.internal.state.CostState;
import etamine.costing.internal.state.Plates;
import etamine.kitchen.item.Items;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.CallSource;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/**
 * Calls for the prices that plates on the menu lack, one call an item, for plates sold below their cost, and for plates
 * above the food cost they should not exceed: one call each, or one for all when there are many.
 */
@Component
public final class CostCalls implements CallSource {
    private static final int SINGLY = 3;

    private final LiveCosts costs;
    private final Items items;

    /** The calls of the open book. */
    @Activate
    public CostCalls(@Reference LiveCosts costs, @Reference Items items) {
        this.costs = costs;
        this.items = items;
    }

    @Override
    public List<Call> calls(Instant now) {
        CostState state = costs.state();
        List<Call> calls = new ArrayList<>();
        List<String> over = new ArrayList<>();
        Map<String, Integer> unpriced = new TreeMap<>();
        state.plates().list().forEach(plate -> {
            String id = plate.recipe();
            if (!plate.complete()) {
                new CostReport(state)
                        .missing(state.order().get(plate.place()).recipe())
                        .forEach(item -> unpriced.merge(item, 1, Integer::sum));
            }
            if (plate.cost().contribution().signum() < 0) {
                calls.add(below(id, plate));
            } else if (plate.cost().overTarget()) {
                over.add(id);
            }
        });
        calls.addAll(over(state, over));
        unpriced.forEach((item, count) -> calls.add(unpriced(item, count)));
        return calls;
    }

    private Call unpriced(String item, int count) {
        return new Call(
                "missing-price/" + item,
                Call.Urgency.SOON,
                items.name(item) + " has no price: " + count + (count == 1 ? " plate costs" : " plates cost")
                        + " more than shown",
                Optional.empty(),
                new Subject("item", item));
    }

    private Call below(String id, Plates.Plate plate) {
        return new Call(
                "below-cost/" + id,
                Call.Urgency.SOON,
                items.name(id) + " is sold "
                        + plate.cost().contribution().negate().rounded() + " below its cost",
                Optional.empty(),
                new Subject("cost", id));
    }

    private List<Call> over(CostState state, List<String> over) {
        Map<String, Plates.Plate> plates = state.plates().byId();
        over.sort(Comparator.comparing((String id) -> excess(plates.get(id))).reversed());
        if (over.size() <= SINGLY) {
            return over.stream().map(id -> over(id, plates.get(id))).toList();
        }
        String worst = over.get(0);
        return List.of(new Call(
                "over-target",
                Call.Urgency.SOON,
                over.size() + " plates cost more than their target, first " + items.name(worst) + ": "
                        + figures(plates.get(worst)),
                Optional.empty(),
                new Subject("cost", worst)));
    }

    private Call over(String id, Plates.Plate plate) {
        return new Call(
                "over-target/" + id,
                Call.Urgency.SOON,
                items.name(id) + " costs more than its target: " + figures(plate),
                Optional.empty(),
                new Subject("cost", id));
    }

    private static String figures(Plates.Plate plate) {
        return plate.cost().foodCostPercent().orElseThrow() + " % of its price, not "
                + plate.cost().target().orElseThrow().toPlainString() + " %";
    }

    private static BigDecimal excess(Plates.Plate plate) {
        return plate.cost()
                .foodCostPercent()
                .orElseThrow()
                .subtract(plate.cost().target().orElseThrow());
    }
}
