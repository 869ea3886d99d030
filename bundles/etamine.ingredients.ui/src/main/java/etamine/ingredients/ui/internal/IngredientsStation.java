package etamine.ingredients.ui.internal;

import etamine.ingredients.IngredientList;
import etamine.kitchen.cost.Costs;
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

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Costs costs;

    /** The station of the open book. */
    @Activate
    public IngredientsStation(@Reference IngredientList list) {
        this.list = list;
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
        return new IngredientsBench(parent, frame, new IngredientsModel(list, () -> Optional.ofNullable(costs)));
    }
}
