package etamine.recipes.ui.internal;

import etamine.kitchen.cost.Costs;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.ItemStarter;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import etamine.recipes.Balances;
import etamine.recipes.RecipeBook;
import etamine.recipes.RecipeSearch;
import etamine.recipes.Revisions;
import etamine.recipes.Scaling;
import etamine.recipes.Trials;
import etamine.recipes.UseLines;
import etamine.recipes.Vessels;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The services the bench works with.
 *
 * @param recipes reads recipes
 * @param book writes them
 * @param lines reads what is typed
 * @param scales scales them
 * @param past knows how they were made and what they were
 * @param search finds them
 * @param insight allergens and rivers
 * @param others what other modules offer, while they are there
 */
record Kitchenware(
        Recipes recipes,
        RecipeBook book,
        UseLines lines,
        Scales scales,
        Past past,
        RecipeSearch search,
        Insight insight,
        Neighbours others) {

    /**
     * What weighs and measures.
     *
     * @param scaling scales recipes
     * @param vessels reads moulds and pans
     * @param balances weighs in against out
     */
    record Scales(Scaling scaling, Vessels vessels, Balances balances) {}

    /**
     * What was before.
     *
     * @param trials keeps tries and tests
     * @param revisions keeps former states
     */
    record Past(Trials trials, Revisions revisions) {}

    /**
     * What other modules offer, while they are there.
     *
     * @param items the items
     * @param starter adds items
     * @param costs the costs
     * @param kitchen the house
     */
    record Neighbours(
            Supplier<Optional<Items>> items,
            Supplier<Optional<ItemStarter>> starter,
            Supplier<Optional<Costs>> costs,
            Supplier<Optional<Kitchen>> kitchen) {}
}
