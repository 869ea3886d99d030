package etamine.recipes.internal;

import etamine.kitchen.recipe.Recipe;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The recipes with makers before users; those in a loop or behind one last. Filled once, then only read.
 *
 * <p>After a change the order is mended rather than made anew: where a maker stands behind its user, only what lies
 * between the two is moved (D. J. Pearce, P. H. J. Kelly, "A dynamic topological sort algorithm for directed acyclic
 * graphs", ACM Journal of Experimental Algorithmics 11, 2006).
 */
final class RecipeOrder {
    private final RecipeLinks links;
    private final List<Recipe> order;
    private Map<String, Integer> places;
    private boolean placesShared;
    private final Set<String> looped = new LinkedHashSet<>();

    private RecipeOrder(RecipeLinks links) {
        this.links = links;
        this.order = new ArrayList<>();
        this.places = new HashMap<>();
    }

    /** A copy with other links, to be changed; the other is not changed any more. */
    private RecipeOrder(RecipeOrder before, RecipeLinks links) {
        this.links = links;
        this.order = new ArrayList<>(before.order);
        this.places = before.places;
        this.placesShared = true;
    }

    /** Takes recipes whose makers are all taken, until only those in or behind a loop are left. */
    static RecipeOrder of(Collection<Recipe> recipes, RecipeLinks links) {
        RecipeOrder fresh = new RecipeOrder(links);
        Map<String, Integer> waiting = new HashMap<>();
        Deque<Recipe> ready = new ArrayDeque<>();
        for (Recipe recipe : recipes) {
            int before = links.makersFor(recipe).size();
            waiting.put(recipe.id(), before);
            if (before == 0) {
                ready.add(recipe);
            }
        }
        while (!ready.isEmpty()) {
            Recipe recipe = ready.remove();
            fresh.append(recipe);
            for (Recipe user : links.usersOf(recipe)) {
                if (waiting.merge(user.id(), -1, Integer::sum) == 0) {
                    ready.add(user);
                }
            }
        }
        recipes.stream().filter(recipe -> waiting.get(recipe.id()) > 0).forEach(recipe -> {
            fresh.looped.add(recipe.id());
            fresh.append(recipe);
        });
        return fresh;
    }

    private void append(Recipe recipe) {
        places.put(recipe.id(), order.size());
        order.add(recipe);
    }

    /** The order once these ids have changed; the recipes are all there are then, the links theirs. */
    RecipeOrder with(Set<String> changed, Map<String, Recipe> recipes, RecipeLinks now) {
        if (looped.isEmpty()) {
            boolean same = changed.stream().allMatch(id -> places.containsKey(id) && recipes.containsKey(id));
            RecipeOrder mended = same ? new RecipeOrder(this, now) : without(changed, recipes, now);
            changed.stream().filter(recipes::containsKey).map(recipes::get).forEach(mended::put);
            if (changed.stream().filter(recipes::containsKey).map(recipes::get).allMatch(mended::settle)) {
                return mended;
            }
        }
        return of(recipes.values(), now);
    }

    /** The order without those that have gone. */
    private RecipeOrder without(Set<String> changed, Map<String, Recipe> recipes, RecipeLinks now) {
        RecipeOrder left = new RecipeOrder(now);
        order.stream()
                .filter(recipe -> !changed.contains(recipe.id()) || recipes.containsKey(recipe.id()))
                .forEach(left::append);
        return left;
    }

    /** Puts a recipe where one of its id stands, or at the end. */
    private void put(Recipe recipe) {
        Integer place = places.get(recipe.id());
        if (place == null) {
            append(recipe);
        } else {
            order.set(place, recipe);
        }
    }

    /** Moves what must stand before or behind a recipe there; false when there is a loop through it. */
    private boolean settle(Recipe recipe) {
        return links.makersFor(recipe).stream().allMatch(maker -> settle(maker, recipe))
                && links.usersOf(recipe).stream().allMatch(user -> settle(recipe, user));
    }

    private boolean settle(Recipe maker, Recipe user) {
        int first = places.get(user.id());
        int last = places.get(maker.id());
        if (first > last) {
            return true;
        }
        Set<Integer> behind = reached(user, first, last, links::usersOf);
        if (behind.contains(last)) {
            return false;
        }
        Set<Integer> before = reached(maker, first, last, links::makersFor);
        List<Recipe> moved = new ArrayList<>();
        before.forEach(place -> moved.add(order.get(place)));
        behind.forEach(place -> moved.add(order.get(place)));
        Set<Integer> free = new TreeSet<>(before);
        free.addAll(behind);
        if (placesShared) {
            places = new HashMap<>(places);
            placesShared = false;
        }
        int next = 0;
        for (int place : free) {
            Recipe recipe = moved.get(next++);
            order.set(place, recipe);
            places.put(recipe.id(), place);
        }
        return true;
    }

    /** The places between two, themselves included, that can be reached from a recipe; in their order. */
    private Set<Integer> reached(Recipe start, int first, int last, Function<Recipe, Collection<Recipe>> next) {
        Set<Integer> reached = new TreeSet<>();
        Deque<Recipe> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            Recipe recipe = open.remove();
            int place = places.get(recipe.id());
            if (place >= first && place <= last && reached.add(place)) {
                open.addAll(next.apply(recipe));
            }
        }
        return reached;
    }

    List<Recipe> recipes() {
        return Collections.unmodifiableList(order);
    }

    /** Where a recipe stands. */
    int place(Recipe recipe) {
        return places.get(recipe.id());
    }

    /** The earlier first. */
    Comparator<Recipe> earlier() {
        return Comparator.comparingInt(this::place);
    }

    boolean hasLoops() {
        return !looped.isEmpty();
    }

    /** The shortest way from a recipe through what it needs back to itself; empty when it is in no loop. */
    Optional<List<Recipe>> loopThrough(Recipe start) {
        if (!looped.contains(start.id())) {
            return Optional.empty();
        }
        Map<String, Recipe> cameFrom = new HashMap<>();
        Deque<Recipe> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            Recipe recipe = open.remove();
            for (Recipe needed : links.makersFor(recipe)) {
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
