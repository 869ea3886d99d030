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
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What recipes make, as items, with the facts rolled up for them. */
public final class MadeThings {
    private final RecipeGraph graph;
    private final FactRoll roll;
    private final RolledFacts facts;
    private final Map<String, Item> items = new TreeMap<>();

    private MadeThings(RecipeGraph graph, FactRoll roll) {
        this.graph = graph;
        this.roll = roll;
        this.facts = new RolledFacts(roll.facts());
    }

    public static Map<String, Item> of(RecipeGraph graph, Map<String, Item> listed) {
        return of(graph, FactRoll.of(graph, listed));
    }

    static Map<String, Item> of(RecipeGraph graph, FactRoll roll) {
        MadeThings things = new MadeThings(graph, roll);
        graph.inOrder().forEach(things::take);
        return Collections.unmodifiableMap(things.items);
    }

    private void take(Recipe recipe) {
        for (int i = 0; i < recipe.makes().size(); i++) {
            Make make = recipe.makes().get(i);
            if (graph.maker(make.item()).filter(maker -> maker == recipe).isPresent()) {
                items.put(make.item(), item(recipe, make, i == 0));
            }
        }
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
