package etamine.costing.internal.engine;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Compiles only recipes that have changed, or that name an item which now converts differently. */
public final class RecipeReuse {
    private final Map<String, CompiledRecipe> before;
    private final Set<String> moved = new HashSet<>();
    private final RecipeCompiler compiler;

    public RecipeReuse(
            Map<String, CompiledRecipe> before,
            Map<String, Item> itemsBefore,
            Map<String, Item> itemsNow,
            Set<String> changed) {
        this.before = before;
        this.compiler = new RecipeCompiler(itemsNow);
        for (String id : changed) {
            Item then = itemsBefore.get(id);
            Item now = itemsNow.get(id);
            if (then == null || now == null || !convertsAlike(then, now)) {
                moved.add(id);
            }
        }
    }

    public CompiledRecipe compile(Recipe recipe) {
        CompiledRecipe known = before.get(recipe.id());
        boolean same =
                known != null && (known.recipe() == recipe || known.recipe().equals(recipe));
        return same && !touchesMoved(recipe) ? known : compiler.compile(recipe);
    }

    private boolean touchesMoved(Recipe recipe) {
        return !moved.isEmpty()
                && (recipe.uses().stream().anyMatch(use -> moved.contains(use.item()))
                        || recipe.makes().stream().anyMatch(make -> moved.contains(make.item())));
    }

    /** The name counts too, since problems name the item. */
    private static boolean convertsAlike(Item then, Item now) {
        return then.name().equals(now.name())
                && then.countIn().equals(now.countIn())
                && then.measures().equals(now.measures())
                && then.preparations().equals(now.preparations());
    }
}
