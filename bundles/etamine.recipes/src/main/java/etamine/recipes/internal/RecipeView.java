package etamine.recipes.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipe;
import java.util.Map;
import java.util.TreeMap;

/** The recipes and items as they would be if a recipe were saved as it is given. */
public record RecipeView(RecipeShelf shelf, KnownItems known, MadeItems made) {

    /**
     * The graph and the items of one moment.
     *
     * @param graph has the recipe
     * @param items has what it makes
     */
    public record Beside(RecipeGraph graph, ItemView items) {}

    public Beside beside(Recipe recipe) {
        RecipeGraph graph = shelf.graph();
        ItemView items = ItemView.of(known, made);
        if (recipe.equals(graph.recipes().get(recipe.id()))) {
            return new Beside(graph, items);
        }
        Map<String, Recipe> changed = new TreeMap<>(graph.recipes());
        changed.put(recipe.id(), recipe);
        RecipeGraph fresh = graph.with(changed);
        return new Beside(fresh, items.withMade(made.itemsWith(fresh), listed()));
    }

    public Map<String, Item> listed() {
        return known.items().map(Items::listed).orElseGet(Map::of);
    }
}
