package etamine.recipes.internal;

import etamine.base.MapChanges;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The recipes of one moment and what they make of one another. Immutable. */
public final class RecipeGraph {
    /** Beyond one recipe in so many it is quicker to begin anew. */
    private static final int MANY = 8;

    private final SortedMap<String, Recipe> recipes;
    private final RecipeLinks links;
    private final RecipeOrder order;
    private final Since<RecipeGraph> since;

    private RecipeGraph(
            SortedMap<String, Recipe> recipes, RecipeLinks links, RecipeOrder order, Since<RecipeGraph> since) {
        this.recipes = recipes;
        this.links = links;
        this.order = order;
        this.since = since;
    }

    /** The graph of these recipes; a map sorted by id keeps its order. */
    public static RecipeGraph of(Map<String, Recipe> recipes) {
        SortedMap<String, Recipe> sorted = sorted(recipes);
        RecipeLinks links = RecipeLinks.of(sorted.values());
        return new RecipeGraph(sorted, links, RecipeOrder.of(sorted.values(), links), Since.nothing());
    }

    private static SortedMap<String, Recipe> sorted(Map<String, Recipe> recipes) {
        return Collections.unmodifiableSortedMap(new TreeMap<>(recipes));
    }

    /** The graph of these recipes, taking over from this one what their changes leave as it is. */
    public RecipeGraph with(Map<String, Recipe> now) {
        SortedMap<String, Recipe> sorted = sorted(now);
        Set<String> changed = MapChanges.between(recipes, sorted);
        if (changed.size() > sorted.size() / MANY) {
            return of(sorted);
        }
        RecipeLinks linked = links.with(in(recipes, changed), in(sorted, changed));
        return new RecipeGraph(sorted, linked, order.with(changed, sorted, linked), Since.of(this, changed));
    }

    private static Collection<Recipe> in(Map<String, Recipe> recipes, Set<String> ids) {
        return ids.stream().flatMap(id -> Stream.ofNullable(recipes.get(id))).toList();
    }

    /** The ids of the recipes that came, went or are others than in that graph. */
    public Set<String> changesFrom(RecipeGraph before) {
        return since.changes(before).orElseGet(() -> MapChanges.between(before.recipes, recipes));
    }

    /** What those recipes make, or made there. */
    Set<String> madeByWhatChangedFrom(RecipeGraph before) {
        Set<String> changed = changesFrom(before);
        return Stream.concat(in(before.recipes, changed).stream(), in(recipes, changed).stream())
                .flatMap(recipe -> recipe.makes().stream())
                .map(Make::item)
                .collect(Collectors.toSet());
    }

    public SortedMap<String, Recipe> recipes() {
        return recipes;
    }

    /** The items that only archived recipes make; the same set as long as it has the same items. */
    public Set<String> archivedItems() {
        return links.archivedItems();
    }

    public List<Recipe> inOrder() {
        return order.recipes();
    }

    RecipeOrder order() {
        return order;
    }

    public Optional<Recipe> maker(String item) {
        List<Recipe> candidates = links.makersOf(item);
        return candidates.stream()
                .filter(recipe -> recipe.id().equals(item))
                .findFirst()
                .or(() -> candidates.stream().findFirst());
    }

    public List<Recipe> makersOf(String item) {
        return links.makersOf(item);
    }

    public List<Recipe> usersOf(String item) {
        return links.usersOf(item);
    }

    /** Whether any recipe is in a loop or behind one. */
    boolean hasLoops() {
        return order.hasLoops();
    }

    /** The shortest way from a recipe through what it needs back to itself; empty when it is in no loop. */
    public Optional<List<Recipe>> loopThrough(String id) {
        return Optional.ofNullable(recipes.get(id)).flatMap(order::loopThrough);
    }
}
