package etamine.recipes.internal;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The recipes of one moment and what they make of one another. Immutable. */
public final class RecipeGraph {
    private static final int FEW = 16;

    private final Map<String, Recipe> recipes;
    private final Map<String, List<Recipe>> makers = new HashMap<>();
    private final Map<String, List<Recipe>> users = new HashMap<>();
    private final List<Recipe> order = new ArrayList<>();
    private final Set<String> looped = new LinkedHashSet<>();
    private final Set<String> archived = new HashSet<>();

    private RecipeGraph(Map<String, Recipe> recipes) {
        this.recipes = recipes;
    }

    /** The graph of these recipes; a map sorted by id keeps its order. */
    public static RecipeGraph of(Map<String, Recipe> recipes) {
        RecipeGraph graph = new RecipeGraph(Collections.unmodifiableMap(new TreeMap<>(recipes)));
        graph.index();
        graph.sort();
        return graph;
    }

    private void index() {
        for (Recipe recipe : recipes.values()) {
            for (Make make : recipe.makes()) {
                put(makers, make.item(), recipe);
            }
            for (Use use : recipe.uses()) {
                put(users, use.item(), recipe);
                use.substitutes().forEach(substitute -> put(users, substitute, recipe));
            }
        }
        makers.forEach((item, candidates) -> {
            if (candidates.stream().allMatch(recipe -> recipe.standing().archived())) {
                archived.add(item);
            }
        });
    }

    private static void put(Map<String, List<Recipe>> index, String item, Recipe recipe) {
        List<Recipe> list = index.computeIfAbsent(item, key -> new ArrayList<>(1));
        if (list.isEmpty() || list.get(list.size() - 1) != recipe) {
            list.add(recipe);
        }
    }

    /** Takes recipes whose makers are all taken, until only those in or behind a loop are left. */
    private void sort() {
        Map<String, Integer> waiting = new HashMap<>();
        Deque<Recipe> ready = new ArrayDeque<>();
        for (Recipe recipe : recipes.values()) {
            int before = makersOfAnythingUsedBy(recipe).size();
            waiting.put(recipe.id(), before);
            if (before == 0) {
                ready.add(recipe);
            }
        }
        while (!ready.isEmpty()) {
            Recipe recipe = ready.remove();
            order.add(recipe);
            for (Recipe user : usersOfAnythingMadeBy(recipe)) {
                if (waiting.merge(user.id(), -1, Integer::sum) == 0) {
                    ready.add(user);
                }
            }
        }
        recipes.values().stream()
                .filter(recipe -> waiting.getOrDefault(recipe.id(), 0) > 0)
                .forEach(recipe -> {
                    looped.add(recipe.id());
                    order.add(recipe);
                });
    }

    private Collection<Recipe> usersOfAnythingMadeBy(Recipe recipe) {
        if (recipe.makes().size() == 1) {
            return usersOf(recipe.makes().get(0).item());
        }
        Map<String, Recipe> all = new LinkedHashMap<>();
        recipe.makes().forEach(make -> usersOf(make.item()).forEach(user -> all.put(user.id(), user)));
        return all.values();
    }

    /** The same as {@link #needs}, found fast where few are needed, as in nearly every recipe. */
    private Collection<Recipe> makersOfAnythingUsedBy(Recipe recipe) {
        List<Recipe> few = new ArrayList<>(4);
        for (Use use : recipe.uses()) {
            for (Recipe maker : makers.getOrDefault(use.item(), List.of())) {
                addOnce(few, maker);
            }
            if (!use.substitutes().isEmpty() || few.size() > FEW) {
                return needs(recipe);
            }
        }
        return few;
    }

    private static void addOnce(List<Recipe> few, Recipe maker) {
        for (Recipe known : few) {
            if (known == maker) {
                return;
            }
        }
        few.add(maker);
    }

    /** The recipes that make anything a recipe uses or names as a substitute. */
    private Collection<Recipe> needs(Recipe recipe) {
        Map<String, Recipe> all = new LinkedHashMap<>();
        for (Use use : recipe.uses()) {
            makersOf(use.item()).forEach(maker -> all.put(maker.id(), maker));
            use.substitutes().forEach(substitute -> makersOf(substitute).forEach(maker -> all.put(maker.id(), maker)));
        }
        return all.values();
    }

    public Map<String, Recipe> recipes() {
        return recipes;
    }

    /** The items that only archived recipes make. */
    Set<String> archivedItems() {
        return archived;
    }

    public List<Recipe> inOrder() {
        return Collections.unmodifiableList(order);
    }

    public Optional<Recipe> maker(String item) {
        List<Recipe> candidates = makers.getOrDefault(item, List.of());
        return candidates.stream()
                .filter(recipe -> recipe.id().equals(item))
                .findFirst()
                .or(() -> candidates.stream().findFirst());
    }

    public List<Recipe> makersOf(String item) {
        return Collections.unmodifiableList(makers.getOrDefault(item, List.of()));
    }

    public List<Recipe> usersOf(String item) {
        return Collections.unmodifiableList(users.getOrDefault(item, List.of()));
    }

    /** Whether any recipe is in a loop or behind one. */
    boolean hasLoops() {
        return !looped.isEmpty();
    }

    /** The shortest way from a recipe through what it needs back to itself; empty when it is in no loop. */
    public Optional<List<Recipe>> loopThrough(String id) {
        if (!looped.contains(id)) {
            return Optional.empty();
        }
        Recipe start = recipes.get(id);
        Map<String, Recipe> cameFrom = new HashMap<>();
        Deque<Recipe> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            Recipe recipe = open.remove();
            for (Recipe needed : needs(recipe)) {
                if (needed == start) {
                    return Optional.of(way(start, recipe, cameFrom));
                }
                if (looped.contains(needed.id()) && cameFrom.putIfAbsent(needed.id(), recipe) == null) {
                    open.add(needed);
                }
            }
        }
        return Optional.empty();
    }

    private static List<Recipe> way(Recipe start, Recipe last, Map<String, Recipe> cameFrom) {
        Deque<Recipe> way = new ArrayDeque<>(List.of(start));
        for (Recipe at = last; at != start; at = cameFrom.get(at.id())) {
            way.addFirst(at);
        }
        way.addFirst(start);
        return List.copyOf(way);
    }
}
