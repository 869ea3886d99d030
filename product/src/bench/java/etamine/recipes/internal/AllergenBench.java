package etamine.recipes.internal;

import etamine.bench.Bench;
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
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongSupplier;

/**
 * Allergens and diets of 10,000 recipes of 12 lines in four levels over 5,000 ingredients rolled up anew, against the
 * least that could do it: one word of bits joined along primitive arrays. The two take turns in one virtual machine.
 */
public final class AllergenBench implements Bench {
    private static final int BOUGHT = 5_000;
    private static final int RECIPES = 10_000;
    private static final int LINES = 12;
    private static final int LEVEL = RECIPES / 4;
    private static final int ROUNDS = 60;
    private static final List<String> WORDS =
            List.of("milk", "egg", "wheat", "celery", "hake", "hazelnut", "soy", "sesame", "mustard", "sulphites");

    private final int[] lines = new int[RECIPES * LINES];
    private final long[] bits = new long[BOUGHT + RECIPES];

    @Override
    public String name() {
        return "allergens";
    }

    @Override
    public List<String> measure() {
        Random random = new Random(11);
        Map<String, Item> items = items(random);
        RecipeGraph graph = RecipeGraph.of(recipes(random));
        double[] floor = new double[ROUNDS];
        double[] engine = new double[ROUNDS];
        for (int round = -ROUNDS; round < ROUNDS; round++) {
            int slot = Math.max(0, round);
            floor[slot] = millis(this::joins);
            engine[slot] = millis(() -> FactRoll.of(graph, items).of("r9999").cardinality());
        }
        Arrays.sort(floor);
        Arrays.sort(engine);
        double least = floor[ROUNDS / 2];
        double middle = engine[ROUNDS / 2];
        return List.of(
                String.format(Locale.ROOT, "one word of bits joined along arrays: median %.3f ms", least),
                String.format(
                        Locale.ROOT,
                        "whole roll-up by the engine:          median %.1f ms, worst %.1f ms (aim: 50)",
                        middle,
                        engine[ROUNDS - 1]),
                String.format(Locale.ROOT, "ratio: %.0f", middle / least));
    }

    private Map<String, Item> items(Random random) {
        Map<String, Item> items = new TreeMap<>();
        for (int i = 0; i < BOUGHT; i++) {
            Set<String> contains = new HashSet<>();
            while (random.nextInt(3) == 0) {
                contains.add(WORDS.get(random.nextInt(WORDS.size())));
            }
            boolean known = random.nextInt(20) > 0;
            bits[i] = contains.hashCode();
            items.put("i" + i, item("i" + i, new Allergens(contains, Set.of(), known)));
        }
        return items;
    }

    private static Item item(String id, Allergens allergens) {
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
                allergens,
                Optional.empty(),
                new Diet(Set.of("vegetarian"), Set.of("vegan")));
    }

    private Map<String, Recipe> recipes(Random random) {
        Map<String, Recipe> recipes = new TreeMap<>();
        for (int r = 0; r < RECIPES; r++) {
            int below = r / LEVEL * LEVEL;
            List<Use> uses = new ArrayList<>();
            for (int line = 0; line < LINES; line++) {
                boolean made = below > 0 && line < 3;
                int item = made ? BOUGHT + below - LEVEL + random.nextInt(LEVEL) : random.nextInt(BOUGHT);
                lines[r * LINES + line] = item;
                uses.add(new Use(name(item), Quantity.of(1, Unit.G), Optional.empty(), Basis.AP));
            }
            recipes.put("r" + r, recipe("r" + r, uses));
        }
        return recipes;
    }

    private static Recipe recipe(String id, List<Use> uses) {
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

    private static String name(int item) {
        return item < BOUGHT ? "i" + item : "r" + (item - BOUGHT);
    }

    private long joins() {
        long last = 0;
        for (int r = 0; r < RECIPES; r++) {
            last = 0;
            for (int at = r * LINES; at < (r + 1) * LINES; at++) {
                last |= bits[lines[at]];
            }
            bits[BOUGHT + r] = last;
        }
        return last;
    }

    private static double millis(LongSupplier work) {
        long start = System.nanoTime();
        long result = work.getAsLong();
        long end = System.nanoTime();
        if (result == 0) {
            throw new IllegalStateException("The roll-up found nothing.");
        }
        return (end - start) / 1e6;
    }
}
