package etamine.costing.internal.history;

import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Everything below one recipe, in one or several structures.
 *
 * @param recipes ids of recipes, the recipe itself first
 * @param items ids of items used
 * @param prepared items used in some preparation, as {@code item/preparation}
 */
record Reach(Set<String> recipes, Set<String> items, Set<String> prepared) {

    static Reach of(String recipe, Structure... structures) {
        Reach reach = new Reach(new LinkedHashSet<>(), new LinkedHashSet<>(), new LinkedHashSet<>());
        for (Structure structure : structures) {
            Set<String> seen = new LinkedHashSet<>();
            structure.recipe(recipe).ifPresent(found -> reach.follow(found.recipe(), structure, seen));
        }
        return reach;
    }

    private void follow(Recipe recipe, Structure structure, Set<String> seen) {
        if (!seen.add(recipe.id())) {
            return;
        }
        recipes.add(recipe.id());
        for (Use use : recipe.uses()) {
            items.add(use.item());
            use.as().ifPresent(as -> prepared.add(use.item() + "/" + as));
            structure.makerOf(use.item()).ifPresent(maker -> follow(maker.recipe(), structure, seen));
        }
    }
}
