package etamine.recipes.ui.internal;

import etamine.kitchen.cost.Costs;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.ItemStarter;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import etamine.recipes.AllergenRollUp;
import etamine.recipes.Balances;
import etamine.recipes.Cards;
import etamine.recipes.RecipeBook;
import etamine.recipes.RecipePhotos;
import etamine.recipes.RecipeSearch;
import etamine.recipes.Revisions;
import etamine.recipes.RiverPapers;
import etamine.recipes.Rivers;
import etamine.recipes.Scaling;
import etamine.recipes.Trials;
import etamine.recipes.UseLines;
import etamine.recipes.Vessels;
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
    private final UseLines lines;
    private final Kitchenware.Scales scales;
    private final Kitchenware.Past past;
    private final RecipeSearch search;
    private final AllergenRollUp allergens;
    private final Rivers rivers;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Items items;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable ItemStarter starter;

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

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable RiverPapers riverPapers;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Paperwork paperwork;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Cards cards;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable RecipePhotos photos;

    /** The station of the open book. */
    @Activate
    public RecipesStation(
            @Reference Recipes recipes,
            @Reference RecipeBook book,
            @Reference UseLines lines,
            @Reference Scaling scaling,
            @Reference Vessels vessels,
            @Reference Balances balances,
            @Reference Trials trials,
            @Reference Revisions revisions,
            @Reference RecipeSearch search,
            @Reference AllergenRollUp allergens,
            @Reference Rivers rivers) {
        this.recipes = recipes;
        this.book = book;
        this.lines = lines;
        this.scales = new Kitchenware.Scales(scaling, vessels, balances);
        this.past = new Kitchenware.Past(trials, revisions);
        this.search = search;
        this.allergens = allergens;
        this.rivers = rivers;
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
                parent, frame, ware(), Optional.ofNullable(paperwork).orElseGet(Paperwork::new));
    }

    private Kitchenware ware() {
        return new Kitchenware(
                recipes,
                book,
                lines,
                scales,
                past,
                search,
                new Insight(
                        allergens,
                        rivers,
                        () -> Optional.ofNullable(riverPapers),
                        () -> Optional.ofNullable(cards),
                        () -> Optional.ofNullable(photos)),
                new Kitchenware.Neighbours(
                        () -> Optional.ofNullable(items),
                        () -> Optional.ofNullable(starter),
                        () -> Optional.ofNullable(costs),
                        () -> Optional.ofNullable(kitchen)));
    }
}
