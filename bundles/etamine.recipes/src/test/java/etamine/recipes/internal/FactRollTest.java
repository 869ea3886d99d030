package etamine.recipes.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Diet;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Making;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Standing;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The roll-up by bits beside plain recursion over sets on generated books: they agree on every recipe. */
class FactRollTest {
    private static final List<String> WORDS =
            List.of("milk", "egg", "gluten", "celery", "hake", "nuts", "soy", "kiwi", "sesame", "mustard");
    private static final List<String> DIETS = List.of("vegan", "vegetarian", "halal");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void agreesWithPlainRecursion(long seed) {
        Map<String, Item> items = items(seed, 60);
        Map<String, Recipe> recipes = recipes(seed, 120, 60);
        RecipeGraph graph = RecipeGraph.of(recipes);
        Map<String, Item> rolled = MadeThings.of(graph, items);
        Plain plain = new Plain(graph, items);

        recipes.values()
                .forEach(recipe -> recipe.makes().forEach(make -> {
                    Item made = rolled.get(make.item());
                    assertThat(made.allergens().contains()).isEqualTo(plain.contains(make.item()));
                    assertThat(made.allergens().known()).isEqualTo(plain.known(make.item()));
                    DIETS.forEach(diet -> {
                        assertThat(made.diet().suits().contains(diet)).isEqualTo(plain.suits(make.item(), diet));
                        assertThat(made.diet().unsuited().contains(diet)).isEqualTo(plain.unsuited(make.item(), diet));
                    });
                }));
    }

    @Test
    void doesNotDependOnTheOrderOfTheRecipes() {
        Map<String, Item> items = items(9, 40);
        Map<String, Recipe> recipes = recipes(9, 80, 40);
        Map<String, Recipe> renamed = new TreeMap<>();
        recipes.forEach(
                (id, recipe) -> renamed.put(new StringBuilder(id).reverse().toString(), recipe));
        Map<String, Item> once = MadeThings.of(RecipeGraph.of(recipes), items);
        Map<String, Item> again = MadeThings.of(RecipeGraph.of(renamed), items);

        once.forEach((id, item) -> assertThat(again.get(id).allergens()).isEqualTo(item.allergens()));
    }

    @Test
    void comesToAnEndInALoop() {
        Map<String, Recipe> loop = new TreeMap<>();
        loop.put("a", recipe("a", List.of(use("b"), use("i0"))));
        loop.put("b", recipe("b", List.of(use("a"), use("i1"))));
        Map<String, Item> items = new TreeMap<>();
        items.put("i0", item("i0", Set.of("milk"), true, Diet.UNKNOWN));
        items.put("i1", item("i1", Set.of("egg"), true, Diet.UNKNOWN));

        Map<String, Item> made = MadeThings.of(RecipeGraph.of(loop), items);
        assertThat(made.get("a").allergens().contains()).containsExactlyInAnyOrder("milk", "egg");
        assertThat(made.get("b").allergens().contains()).containsExactlyInAnyOrder("milk", "egg");
    }

    static Map<String, Item> items(long seed, int count) {
        Random random = new Random(seed);
        Map<String, Item> items = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            Set<String> contains = new HashSet<>();
            while (random.nextInt(3) == 0) {
                contains.add(WORDS.get(random.nextInt(WORDS.size())));
            }
            Set<String> suits = new HashSet<>();
            Set<String> unsuited = new HashSet<>();
            DIETS.forEach(diet -> (random.nextInt(9) > 0 ? suits : unsuited).add(diet));
            suits.removeIf(diet -> random.nextInt(12) == 0);
            items.put("i" + i, item("i" + i, contains, random.nextInt(30) > 0, new Diet(suits, unsuited)));
        }
        return items;
    }

    private static Item item(String id, Set<String> contains, boolean known, Diet diet) {
        return new Item(
                id,
                id,
                "",
                false,
                "",
                Optional.empty(),
                Unit.G,
                List.of(),
                List.of(),
                new Allergens(contains, Set.of(), known),
                Optional.empty(),
                diet);
    }

    /** Recipes that use items and recipes before them, so that there is no loop. */
    static Map<String, Recipe> recipes(long seed, int count, int items) {
        Random random = new Random(seed * 31);
        Map<String, Recipe> recipes = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            List<Use> uses = new ArrayList<>();
            int lines = 1 + random.nextInt(5);
            for (int line = 0; line < lines; line++) {
                uses.add(use(
                        i > 0 && random.nextInt(4) == 0 ? "r" + random.nextInt(i) : "i" + random.nextInt(items + 1)));
            }
            if (random.nextInt(6) == 0) {
                uses.set(0, instead(uses.get(0), i > 0 ? "r" + random.nextInt(i) : "i0"));
            }
            recipes.put("r" + i, recipe("r" + i, uses));
        }
        return recipes;
    }

    static Use use(String item) {
        return new Use(item, Quantity.of(1, Unit.G), Optional.empty(), Basis.AP);
    }

    private static Use instead(Use use, String substitute) {
        return new Use(use.item(), use.quantity(), use.as(), use.basis(), List.of(substitute));
    }

    static Recipe recipe(String id, List<Use> uses) {
        return new Recipe(
                id,
                id,
                Kind.COMPONENT,
                uses,
                List.of(new Make(id, Quantity.of(1, Unit.G), Optional.empty())),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Making.PLAIN,
                Standing.DRAFT,
                List.of(),
                "");
    }

    /** What the contract says, by recursion and sets. */
    private record Plain(RecipeGraph graph, Map<String, Item> items) {
        private List<Recipe> makers(String item) {
            return graph.makersOf(item);
        }

        private List<String> parts(String item) {
            return makers(item).stream()
                    .flatMap(maker -> maker.uses().stream())
                    .flatMap(use -> {
                        List<String> each = new ArrayList<>(use.substitutes());
                        each.add(use.item());
                        return each.stream();
                    })
                    .toList();
        }

        Set<String> contains(String item) {
            Set<String> all = new HashSet<>();
            Optional.ofNullable(items.get(item))
                    .ifPresent(own ->
                            own.allergens().contains().forEach(word -> all.add(word.equals("hake") ? "fish" : word)));
            parts(item).forEach(part -> all.addAll(contains(part)));
            return all;
        }

        boolean known(String item) {
            Map<String, Item> own = new HashMap<>(items);
            return own.containsKey(item)
                    ? own.get(item).allergens().known()
                    : !makers(item).isEmpty() && parts(item).stream().allMatch(this::known);
        }

        boolean suits(String item, String diet) {
            return items.containsKey(item)
                    ? items.get(item).diet().suits().contains(diet)
                    : !makers(item).isEmpty() && parts(item).stream().allMatch(part -> suits(part, diet));
        }

        boolean unsuited(String item, String diet) {
            return items.containsKey(item)
                    ? items.get(item).diet().unsuited().contains(diet)
                    : parts(item).stream().anyMatch(part -> unsuited(part, diet));
        }
    }
}
