package etamine.costing.internal.history;

import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.Overlay;
import etamine.costing.internal.engine.RecipeReuse;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Recipe;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Two standpoints mixed: yields from one, portions from one, everything else from one. What is the same in both is
 * compiled once.
 */
final class Mixture {
    /** Bits of a mix; a set bit takes that kind of thing from now, a clear one from then. */
    static final int YIELD = 1;

    static final int PORTION = 2;
    static final int RECIPE = 4;
    static final int MIXES = 8;

    private final Standpoint then;
    private final Standpoint now;
    private final Set<String> changedItems = new HashSet<>();
    private final Map<String, CompiledRecipe> compiled = new HashMap<>();
    private final List<Structure> structures = new ArrayList<>();

    /** Mixes; {@code compiledNow} are the recipes of now as the live reckoning has them. */
    Mixture(Standpoint then, Standpoint now, List<CompiledRecipe> compiledNow) {
        this.then = then.alike(now);
        this.now = now;
        this.then.items().forEach((id, item) -> {
            if (now.items().get(id) != item) {
                changedItems.add(id);
            }
        });
        now.items().keySet().stream()
                .filter(id -> !this.then.items().containsKey(id))
                .forEach(changedItems::add);
        compiledNow.forEach(one -> compiled.put(one.recipe().id(), one));
        for (int mix = 0; mix < MIXES; mix++) {
            structures.add(structure(mix));
        }
    }

    /** The mix of those bits. Mixes that come to the same are the same object. */
    Structure of(int bits) {
        return structures.get(bits);
    }

    Standpoint then() {
        return then;
    }

    Standpoint now() {
        return now;
    }

    Set<String> changedItems() {
        return changedItems;
    }

    private Structure structure(int mix) {
        Map<String, Item> mixed = mixed(mix);
        Map<String, Item> base = side(mix, RECIPE).items();
        Map<String, Item> items = mixed.isEmpty() ? base : new Overlay<>(mixed, base);
        RecipeReuse reuse = new RecipeReuse(compiled, now.items(), items, changedItems);
        List<CompiledRecipe> order = side(mix, RECIPE).order().stream()
                .map(recipe -> reuse.compile(recipe(recipe, mix)))
                .toList();
        return structures.stream()
                .filter(known -> known.standsOn(mixed, order))
                .findFirst()
                .orElseGet(() -> new Structure(items, mixed, order));
    }

    private Standpoint side(int mix, int bit) {
        return (mix & bit) == 0 ? then : now;
    }

    private Recipe recipe(Recipe base, int mix) {
        Recipe yields = side(mix, YIELD).recipes().getOrDefault(base.id(), base);
        Recipe portions = side(mix, PORTION).recipes().getOrDefault(base.id(), base);
        return RecipeMix.of(base, yields, portions);
    }

    private Map<String, Item> mixed(int mix) {
        Map<String, Item> base = side(mix, RECIPE).items();
        Map<String, Item> mixed = new HashMap<>();
        for (String id : changedItems) {
            Item item = base.get(id);
            if (item != null) {
                mixed.put(
                        id,
                        item(
                                item,
                                side(mix, YIELD).items().get(id),
                                side(mix, PORTION).items().get(id)));
            }
        }
        return mixed;
    }

    /** A made item is measured by its portion; any item's preparations have yields. */
    private static Item item(Item base, @Nullable Item yields, @Nullable Item portions) {
        Item mixed = base;
        if (yields != null && yields != base) {
            List<Preparation> preparations = base.preparations().stream()
                    .map(own -> yields.preparation(own.name())
                            .map(other -> new Preparation(own.name(), other.yield(), own.measures()))
                            .orElse(own))
                    .toList();
            mixed = preparations.equals(base.preparations()) ? mixed : mixed.withPreparations(preparations);
        }
        boolean sized = base.made() && portions != null && portions.countIn().isLike(base.countIn());
        return sized && !portions.measures().equals(base.measures()) ? mixed.withMeasures(portions.measures()) : mixed;
    }
}
