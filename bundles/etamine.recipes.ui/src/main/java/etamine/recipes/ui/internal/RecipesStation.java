package etamine.recipes.ui.internal;

import etamine.kitchen.cost.Costs;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import etamine.recipes.RecipeBook;
import etamine.recipes.Scaling;
import etamine.recipes.UseLines;
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

/** Where recipes are written. */
@Component
public final class RecipesStation implements Station {
    private static final int ORDER = 200;

    private final Recipes recipes;
    private final RecipeBook book;
    private final Scaling scaling;
    private final UseLines lines;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Items items;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Costs costs;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Kitchen kitchen;

    /** The station of the open book. */
    @Activate
    public RecipesStation(
            @Reference Recipes recipes,
            @Reference RecipeBook book,
            @Reference Scaling scaling,
            @Reference UseLines lines) {
        this.recipes = recipes;
        this.book = book;
        this.scaling = scaling;
        this.lines = lines;
    }

    @Override
    public String id() {
        return "recipes";
    }

    @Override
    public String name() {
        return "Recipes";
    }

    @Override
    public String icon() {
        return "recipes";
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public Set<String> shows() {
        return Set.of("recipe");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        return new RecipesBench(
                parent,
                frame,
                new Kitchenware(
                        recipes,
                        book,
                        scaling,
                        lines,
                        () -> Optional.ofNullable(items),
                        () -> Optional.ofNullable(costs),
                        () -> Optional.ofNullable(kitchen)));
    }
}
