package etamine.costing.internal.engine;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which recipe decides what a made item costs: the one of the item's own id, else the first by id. */
public final class Makers {
    private Makers() {}

    /** For each item made, the id of the recipe that decides. */
    public static Map<String, String> of(List<Recipe> recipes) {
        Map<String, String> makers = new HashMap<>();
        recipes.stream().sorted(Comparator.comparing(Recipe::id)).forEach(recipe -> {
            for (Make make : recipe.makes()) {
                if (make.item().equals(recipe.id())) {
                    makers.put(make.item(), recipe.id());
                } else {
                    makers.putIfAbsent(make.item(), recipe.id());
                }
            }
        });
        return makers;
    }
}
