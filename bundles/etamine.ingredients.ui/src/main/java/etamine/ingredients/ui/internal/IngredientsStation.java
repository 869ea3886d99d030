package etamine.ingredients.ui.internal;

import etamine.ingredients.IngredientList;
import etamine.ingredients.IngredientMerges;
import etamine.ingredients.StarterSet;
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

/** Where ingredients are kept. */
@Component
public final class IngredientsStation implements Station {
    private static final int ORDER = 100;

    private final IngredientList list;
    private final Items items;
    private final IngredientMerges merges;
    private final StarterSet starters;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Costs costs;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Recipes recipes;

    /** The station of the open book. */
    @Activate
    public IngredientsStation(
            @Reference IngredientList list,
            @Reference Items items,
            @Reference IngredientMerges merges,
            @Reference StarterSet starters,
            @Reference Kitchen kitchen) {
        this.list = list;
        this.items = items;
        this.merges = merges;
        this.starters = starters;
        this.kitchen = kitchen;
    }

    @Override
    public String id() {
        return "ingredients";
    }

    @Override
    public String name() {
        return "Ingredients";
    }

    @Override
    public String icon() {
        return "ingredients";
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public Set<String> shows() {
        return Set.of("item");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        Known.Others others = new Known.Others(() -> Optional.ofNullable(costs), () -> Optional.ofNullable(recipes));
        return new IngredientsBench(parent, frame, new Known(list, items, merges, starters, kitchen, others));
    }
}
