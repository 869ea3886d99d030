package etamine.costing.internal;

import etamine.base.Subject;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.item.Items;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.CallSource;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Calls for the prices that plates on the menu lack, one call an item, and for plates sold below their cost. */
@Component
public final class CostCalls implements CallSource {
    private final Costs costs;
    private final Items items;

    /** The calls of the open book. */
    @Activate
    public CostCalls(@Reference Costs costs, @Reference Items items) {
        this.costs = costs;
        this.items = items;
    }

    @Override
    public List<Call> calls(Instant now) {
        List<Call> calls = new ArrayList<>();
        Map<String, Integer> plates = new TreeMap<>();
        for (RecipeCost cost : costs.recipes().values()) {
            if (cost.plate().isPresent()) {
                cost.missing().forEach(item -> plates.merge(item, 1, Integer::sum));
                if (cost.plate().get().contribution().signum() < 0) {
                    calls.add(below(cost));
                }
            }
        }
        plates.forEach((item, count) -> calls.add(new Call(
                "missing-price/" + item,
                Call.Urgency.SOON,
                items.name(item) + " has no price: " + count + (count == 1 ? " plate costs" : " plates cost")
                        + " more than shown",
                Optional.empty(),
                new Subject("item", item))));
        return calls;
    }

    private Call below(RecipeCost cost) {
        return new Call(
                "below-cost/" + cost.recipe(),
                Call.Urgency.SOON,
                items.name(cost.recipe()) + " is sold "
                        + cost.plate().orElseThrow().contribution().negate().rounded() + " below its cost",
                Optional.empty(),
                new Subject("cost", cost.recipe()));
    }
}
