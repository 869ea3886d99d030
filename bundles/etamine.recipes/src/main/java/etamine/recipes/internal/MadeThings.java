package etamine.recipes.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
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
import java.util.SortedMap;
import java.util.TreeMap;

/** What recipes make, as items, with the facts rolled up for them. */
public final class MadeThings {
    private final RecipeGraph graph;
    private final FactRoll roll;
    private final RolledFacts facts;

    private MadeThings(FactRoll roll) {
        this.graph = roll.graph();
        this.roll = roll;
        this.facts = new RolledFacts(roll.facts());
    }

    public static SortedMap<String, Item> of(RecipeGraph graph, Map<String, Item> listed) {
        return of(FactRoll.of(graph, listed));
    }

    public static SortedMap<String, Item> of(FactRoll roll) {
        MadeThings things = new MadeThings(roll);
        SortedMap<String, Item> items = new TreeMap<>();
        things.graph.inOrder().stream()
                .flatMap(recipe -> recipe.makes().stream())
                .forEach(make -> things.item(make.item()).ifPresent(item -> items.put(item.id(), item)));
        return Collections.unmodifiableSortedMap(items);
    }

    /** What is made now, given what was made of an earlier roll-up; the very same map where it is the same. */
    public static SortedMap<String, Item> of(FactRoll roll, SortedMap<String, Item> before, FactRoll beforeRoll) {
        MadeThings things = new MadeThings(roll);
        Map<String, Optional<Item>> changed = new HashMap<>();
        for (String id : things.changesFrom(beforeRoll)) {
            Optional<Item> is = things.item(id);
            if (!is.equals(Optional.ofNullable(before.get(id)))) {
                changed.put(id, is);
            }
        }
        return changed.isEmpty() ? before : with(before, changed);
    }

    private static SortedMap<String, Item> with(SortedMap<String, Item> before, Map<String, Optional<Item>> changed) {
        SortedMap<String, Item> items = new TreeMap<>(before);
        changed.forEach((id, is) -> is.ifPresentOrElse(item -> items.put(id, item), () -> items.remove(id)));
        return Collections.unmodifiableSortedMap(items);
    }

    private Set<String> changesFrom(FactRoll before) {
        Set<String> changed = new HashSet<>(roll.changesFrom(before));
        changed.addAll(graph.madeByWhatChangedFrom(before.graph()));
        return changed;
    }

    private Optional<Item> item(String id) {
        return graph.maker(id)
                .flatMap(recipe -> recipe.makes().stream()
                        .filter(make -> make.item().equals(id))
                        .findFirst()
                        .map(make -> item(recipe, make, make == recipe.makes().get(0))));
    }

    private Item item(Recipe recipe, Make make, boolean main) {
        RolledFacts.Read rolled = facts.read(roll.of(make.item()));
        return new Item(
                make.item(),
                named(recipe, make) ? recipe.name() : spoken(make.item()),
                heading(recipe.kind()),
                true,
                "",
                main ? recipe.keeps() : Optional.empty(),
                make.quantity().unit(),
                main ? portion(recipe) : List.of(),
                List.of(),
                RolledFacts.allergens(rolled),
                Optional.empty(),
                RolledFacts.diet(rolled));
    }

    /** Whether it goes by the recipe's name: of several things that come apart, only the one of the recipe's own id. */
    private static boolean named(Recipe recipe, Make make) {
        return make.item().equals(recipe.id()) || recipe.makes().size() == 1;
    }

    /** The measure that a recipe's portion gives to the first thing it makes. */
    public static List<Equivalence> portion(Recipe recipe) {
        return recipe.portion()
                .filter(portion -> portion.unit().dimension() != Dimension.PORTION)
                .map(portion -> List.of(new Equivalence(Quantity.of(1, Unit.PORTION), portion)))
                .orElseGet(List::of);
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
