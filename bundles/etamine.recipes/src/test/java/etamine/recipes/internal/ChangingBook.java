package etamine.recipes.internal;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Standing;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Recipes and ingredients that change step by step, as a seed will have it: renamed, made of other things, gone, back. */
public final class ChangingBook {
    private static final int ITEMS = 60;
    private static final int RECIPES = 120;

    private final Random random;
    private final Map<String, Recipe> recipes;
    private final Map<String, Item> items;

    /** A book of that seed. */
    public ChangingBook(long seed) {
        random = new Random(seed);
        recipes = new TreeMap<>(FactRollTest.recipes(seed, RECIPES, ITEMS));
        items = new TreeMap<>(FactRollTest.items(seed, ITEMS));
    }

    /** The recipes as they are. */
    public SortedMap<String, Recipe> recipes() {
        return Collections.unmodifiableSortedMap(new TreeMap<>(recipes));
    }

    /** The ingredients as they are. */
    public SortedMap<String, Item> listed() {
        return Collections.unmodifiableSortedMap(new TreeMap<>(items));
    }

    /** The ingredients and what the recipes make. */
    public SortedMap<String, Item> items(RecipeGraph graph) {
        SortedMap<String, Item> all = new TreeMap<>(MadeThings.of(graph, items));
        all.putAll(items);
        return Collections.unmodifiableSortedMap(all);
    }

    /** Every id that there is or was, and some that never were. */
    public Set<String> everything() {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < RECIPES; i++) {
            ids.addAll(List.of("i" + i, "r" + i, "x" + i));
        }
        return ids;
    }

    /** Gives back one time in three the recipes there were before there was a loop. */
    public void mayGoBackTo(Map<String, Recipe> before) {
        if (random.nextInt(3) == 0) {
            recipes.clear();
            recipes.putAll(before);
        }
    }

    /** Changes one thing. */
    public void change() {
        String recipe = "r" + random.nextInt(RECIPES);
        String item = "i" + random.nextInt(ITEMS);
        switch (random.nextInt(12)) {
            case 0 -> recipes.remove(recipe);
            case 1 -> recipes.put(recipe, FactRollTest.recipe(recipe, List.of(FactRollTest.use(item))));
            case 2 -> recipes.computeIfPresent(recipe, (id, was) -> was.withStanding(archived(was)));
            case 3 -> recipes.computeIfPresent(recipe, (id, was) -> was.withName(name()));
            case 4 -> recipes.computeIfPresent(recipe, (id, was) -> was.withMakes(moreMade(was)));
            case 5 -> items.remove(item);
            case 6 ->
                items.put(item, FactRollTest.items(random.nextInt(), ITEMS).get(item));
            case 7 -> items.computeIfPresent(item, (id, was) -> was.withName(name()));
            case 8 -> items.computeIfPresent(item, (id, was) -> was.withAllergens(rare()));
            case 9 -> recipes.computeIfPresent(recipe, (id, was) -> was.withUses(List.of(user(id))));
            default -> recipes.computeIfPresent(recipe, (id, was) -> was.withUses(moreUsed(was)));
        }
    }

    /** Something that uses a recipe, which makes a loop of it, or the recipe itself. */
    private Use user(String id) {
        return recipes.values().stream()
                .filter(recipe ->
                        recipe.uses().stream().anyMatch(use -> use.item().equals(id)))
                .findFirst()
                .map(recipe -> FactRollTest.use(recipe.id()))
                .orElseGet(() -> FactRollTest.use(id));
    }

    private static Standing archived(Recipe recipe) {
        return new Standing(0, !recipe.standing().archived(), List.of());
    }

    private String name() {
        List<String> names = List.of("onions", "onion, brown", "Onion, red", "loaves", "leaf", "Céleri", "celeri");
        return names.get(random.nextInt(names.size()));
    }

    private Allergens rare() {
        return new Allergens(Set.of("lupin" + random.nextInt(2)), Set.of(), true);
    }

    private List<Make> moreMade(Recipe recipe) {
        Set<String> seen = new HashSet<>();
        List<Make> makes = new ArrayList<>(recipe.makes());
        makes.add(new Make("x" + random.nextInt(30), Quantity.of(1, Unit.G), Optional.empty()));
        return makes.stream().filter(make -> seen.add(make.item())).toList();
    }

    /** Mostly of recipes of lower numbers, so that a loop is seldom. */
    private List<Use> moreUsed(Recipe recipe) {
        int own = Integer.parseInt(recipe.id().substring(1));
        int lower = own == 0 ? RECIPES : random.nextInt(own);
        int other = random.nextInt(9) == 0 ? random.nextInt(RECIPES) : lower;
        List<Use> uses = new ArrayList<>(recipe.uses());
        if (uses.size() > 3) {
            uses.clear();
        }
        uses.add(FactRollTest.use(random.nextBoolean() ? "r" + other : "x" + random.nextInt(30)));
        return uses;
    }
}
