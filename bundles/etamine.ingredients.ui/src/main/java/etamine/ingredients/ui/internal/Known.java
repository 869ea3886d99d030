package etamine.ingredients.ui.internal;

import etamine.ingredients.IngredientList;
import etamine.ingredients.IngredientMerges;
import etamine.ingredients.StarterSet;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What the station knows of the kitchen.
 *
 * @param list the ingredient list
 * @param items every item, made ones too
 * @param merges finds and makes one what is there twice
 * @param starters common ingredients to begin with
 * @param kitchen the house and its clock
 * @param others what only other modules know
 */
record Known(
        IngredientList list,
        Items items,
        IngredientMerges merges,
        StarterSet starters,
        Kitchen kitchen,
        Others others) {

    /**
     * What only other modules know, as long as they are there.
     *
     * @param costs what things cost
     * @param recipes what makes and uses them
     */
    record Others(Supplier<Optional<Costs>> costs, Supplier<Optional<Recipes>> recipes) {
        /** No other module. */
        static final Others NONE = new Others(Optional::empty, Optional::empty);
    }
}
