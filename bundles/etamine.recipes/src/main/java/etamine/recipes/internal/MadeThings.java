package etamine.recipes.internal;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Dimension;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What recipes make, as items. Allergens go through the whole graph: a made thing has those of everything in it, and
 * they are known only when they are known of everything in it.
 */
final class MadeThings {
    private final RecipeGraph graph;
    private final Map<String, Item> listed;
    private final Map<String, Allergens> rolled = new HashMap<>();
    private final Map<String, Item> items = new TreeMap<>();

    private MadeThings(RecipeGraph graph, Map<String, Item> listed) {
        this.graph = graph;
        this.listed = listed;
    }

    static Map<String, Item> of(RecipeGraph graph, Map<String, Item> listed) {
        MadeThings things = new MadeThings(graph, listed);
        graph.inOrder().forEach(things::take);
        return Collections.unmodifiableMap(things.items);
    }

    private void take(Recipe recipe) {
        Allergens allergens = union(recipe);
        for (int i = 0; i < recipe.makes().size(); i++) {
            Make make = recipe.makes().get(i);
            rolled.merge(make.item(), allergens, MadeThings::join);
            if (graph.maker(make.item()).filter(maker -> maker == recipe).isPresent()) {
                items.put(make.item(), item(recipe, make, i == 0));
            } else {
                items.computeIfPresent(make.item(), (id, item) -> item.withAllergens(rolled.get(id)));
            }
        }
    }

    private Item item(Recipe recipe, Make make, boolean main) {
        return new Item(
                make.item(),
                main || make.item().equals(recipe.id()) ? recipe.name() : spoken(make.item()),
                heading(recipe.kind()),
                true,
                "",
                main ? recipe.keeps() : Optional.empty(),
                make.quantity().unit(),
                main ? portion(recipe) : List.of(),
                List.of(),
                rolled.get(make.item()),
                Optional.empty());
    }

    /** The measure that a recipe's portion gives to the first thing it makes. */
    static List<Equivalence> portion(Recipe recipe) {
        return recipe.portion()
                .filter(portion -> portion.unit().dimension() != Dimension.PORTION)
                .map(portion -> List.of(new Equivalence(Quantity.of(1, Unit.PORTION), portion)))
                .orElseGet(List::of);
    }

    private Allergens union(Recipe recipe) {
        Allergens all = new Allergens(Set.of(), Set.of(), true);
        for (Use use : recipe.uses()) {
            all = join(all, of(use.item()));
        }
        return all;
    }

    private Allergens of(String item) {
        Item own = listed.get(item);
        Allergens made = rolled.get(item);
        if (own != null && made != null) {
            return join(own.allergens(), made);
        }
        if (own != null) {
            return own.allergens();
        }
        return made != null ? made : Allergens.unknown();
    }

    private static Allergens join(Allergens one, Allergens other) {
        boolean adds = !one.contains().containsAll(other.contains())
                || !one.mayContain().containsAll(other.mayContain())
                || one.known() && !other.known();
        return adds ? union(one, other) : one;
    }

    private static Allergens union(Allergens one, Allergens other) {
        Set<String> contains = new HashSet<>(one.contains());
        contains.addAll(other.contains());
        Set<String> mayContain = new HashSet<>(one.mayContain());
        mayContain.addAll(other.mayContain());
        mayContain.removeAll(contains);
        return new Allergens(contains, mayContain, one.known() && other.known());
    }

    private static String heading(Kind kind) {
        return switch (kind) {
            case COMPONENT -> "Components";
            case PLATE -> "Plates";
            case BREAKDOWN -> "From breakdowns";
            case DRINK -> "Drinks";
        };
    }

    private static String spoken(String id) {
        String words = id.replace('-', ' ').replace('_', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
