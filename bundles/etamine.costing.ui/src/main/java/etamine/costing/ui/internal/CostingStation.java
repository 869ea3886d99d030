package etamine.costing.ui.internal;

import etamine.costing.ButcherTests;
import etamine.costing.CostHistory;
import etamine.costing.CostPapers;
import etamine.costing.CostSettings;
import etamine.costing.Experiments;
import etamine.costing.MenuAnalysis;
import etamine.costing.Pricing;
import etamine.costing.Statements;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import etamine.shell.Bench;
import etamine.shell.Frame;
import etamine.shell.Station;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Where costs are looked at. */
@Component
public final class CostingStation implements Station {
    private final Costs costs;
    private final Items items;
    private final Kitchen kitchen;

    @Reference
    private CostSettings settings;

    @Reference
    private Experiments experiments;

    @Reference
    private CostHistory history;

    @Reference
    private Pricing pricing;

    @Reference
    private MenuAnalysis menu;

    @Reference
    private Statements statements;

    @Reference
    private ButcherTests butcher;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable CostPapers papers;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Recipes recipes;

    /** The station of the open book. */
    @Activate
    public CostingStation(@Reference Costs costs, @Reference Items items, @Reference Kitchen kitchen) {
        this.costs = costs;
        this.items = items;
        this.kitchen = kitchen;
    }

    @Override
    public String id() {
        return "costing";
    }

    @Override
    public String name() {
        return "Costing";
    }

    @Override
    public String icon() {
        return "costing";
    }

    @Override
    public int order() {
        return 300;
    }

    @Override
    public Set<String> shows() {
        return Set.of("cost", "price");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        CostingParts parts = new CostingParts(
                costs,
                items,
                kitchen,
                settings,
                experiments,
                history,
                pricing,
                menu,
                statements,
                butcher,
                () -> Optional.ofNullable(papers),
                () -> Optional.ofNullable(recipes));
        return new CostingBench(parent, frame, parts);
    }
}
