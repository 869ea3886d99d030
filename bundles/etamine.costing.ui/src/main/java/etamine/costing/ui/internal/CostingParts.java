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
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What the pages read and write.
 *
 * @param costs what things cost
 * @param items names and measures of items
 * @param kitchen the house and its clock
 * @param settings how costs are reckoned
 * @param experiments what is tried without writing it
 * @param history what things cost before
 * @param pricing what to charge
 * @param menu how plates sell and what they earn
 * @param statements ideal against actual
 * @param butcher what parts of something cost
 * @param papers what can be put on paper, where the module that lays it out is there
 * @param recipes the recipes, where that module is there
 */
record CostingParts(
        Costs costs,
        Items items,
        Kitchen kitchen,
        CostSettings settings,
        Experiments experiments,
        CostHistory history,
        Pricing pricing,
        MenuAnalysis menu,
        Statements statements,
        ButcherTests butcher,
        Supplier<Optional<CostPapers>> papers,
        Supplier<Optional<Recipes>> recipes) {

    Figures figures() {
        return new Figures(kitchen);
    }

    Optional<Recipe> recipe(String id) {
        return recipes.get().flatMap(known -> known.find(id));
    }

    /** A recipe's name, or that of the item it is called like. */
    String recipeName(String id) {
        return recipe(id).map(Recipe::name).orElseGet(() -> items.name(id));
    }

    /** The name of an item or recipe. */
    String name(String id) {
        return items.find(id).isPresent() ? items.name(id) : recipeName(id);
    }

    /** The food cost a plate should not exceed: its own, else the kitchen's. */
    Optional<BigDecimal> target(String recipe) {
        return recipe(recipe)
                .flatMap(Recipe::menu)
                .flatMap(MenuPrice::targetFoodCostPercent)
                .or(() -> settings.rules().targetFoodCostPercent());
    }
}
