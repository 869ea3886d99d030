package etamine.recipes.ui.internal;

import etamine.kitchen.cost.Costs;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import etamine.recipes.RecipeBook;
import etamine.recipes.Scaling;
import etamine.recipes.UseLines;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The services the bench works with.
 *
 * @param recipes reads recipes
 * @param book writes them
 * @param scaling scales them
 * @param lines reads what is typed
 * @param items the items, while there is an ingredient list
 * @param costs the costs, while there is costing
 * @param kitchen the house, while it is known
 */
record Kitchenware(
        Recipes recipes,
        RecipeBook book,
        Scaling scaling,
        UseLines lines,
        Supplier<Optional<Items>> items,
        Supplier<Optional<Costs>> costs,
        Supplier<Optional<Kitchen>> kitchen) {}
