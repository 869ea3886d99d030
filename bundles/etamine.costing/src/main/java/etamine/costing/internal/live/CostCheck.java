package etamine.costing.internal.live;

import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.RecipeCost;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds what keeps costs from being complete. */
@Component
public final class CostCheck implements BookCheck {
    private final Costs costs;

    /** The check of the open book. */
    @Activate
    public CostCheck(@Reference Costs costs) {
        this.costs = costs;
    }

    @Override
    public List<Problem> check() {
        return costs.recipes().values().stream()
                .map(RecipeCost::warnings)
                .flatMap(List::stream)
                .distinct()
                .toList();
    }
}
