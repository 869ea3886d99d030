package etamine.costing.internal.history;

import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.Recipe;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The book as it stood at one moment.
 *
 * @param items every item, by id
 * @param recipes every recipe by id, each after those that make what it uses
 * @param quotes the price an item was reckoned with
 */
record Standpoint(Map<String, Item> items, Map<String, Recipe> recipes, Function<Item, Optional<PriceQuote>> quotes) {

    static Standpoint of(Map<String, Item> items, List<Recipe> order, Function<Item, Optional<PriceQuote>> quotes) {
        Map<String, Recipe> recipes = new LinkedHashMap<>();
        order.forEach(recipe -> recipes.put(recipe.id(), recipe));
        return new Standpoint(items, recipes, quotes);
    }

    /** The same with the very objects of another standpoint wherever they are equal, so that identity tells changes. */
    Standpoint alike(Standpoint other) {
        Map<String, Item> sameItems = new HashMap<>();
        items.forEach((id, item) -> sameItems.put(id, same(item, other.items.get(id))));
        Map<String, Recipe> sameRecipes = new LinkedHashMap<>();
        recipes.forEach((id, recipe) -> sameRecipes.put(id, same(recipe, other.recipes.get(id))));
        return new Standpoint(sameItems, sameRecipes, quotes);
    }

    private static <T> T same(T one, @Nullable T other) {
        return one.equals(other) ? other : one;
    }

    List<Recipe> order() {
        return new ArrayList<>(recipes.values());
    }
}
