package etamine.recipes.internal;

import etamine.base.MapChanges;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * The facts of every item of one moment, rolled up through the recipes: a row of bits for each item, joined in the order
 * of the graph, so that each recipe is taken once. Immutable once made.
 */
public final class FactRoll {
    private final RecipeGraph graph;
    private final Map<String, Item> listed;
    private final FactBits facts;
    private final FactRows rows;
    private Since<FactRoll> since = Since.nothing();

    private FactRoll(RecipeGraph graph, Map<String, Item> listed, FactBits facts, FactRows rows) {
        this.graph = graph;
        this.listed = listed;
        this.facts = facts;
        this.rows = rows;
    }

    public static FactRoll of(RecipeGraph graph, Map<String, Item> listed) {
        return of(graph, listed, new FactBits(listed.values()));
    }

    private static FactRoll of(RecipeGraph graph, Map<String, Item> listed, FactBits facts) {
        int likely = listed.size() + graph.recipes().size();
        FactRoll roll = new FactRoll(graph, listed, facts, new FactRows(facts.size(), likely));
        listed.keySet().forEach(roll::row);
        graph.inOrder().forEach(recipe -> recipe.makes().forEach(make -> roll.row(make.item())));
        boolean changed = roll.pass();
        while (changed && graph.hasLoops()) {
            changed = roll.pass();
        }
        return roll;
    }

    private boolean pass() {
        long[] row = rows.empty();
        boolean changed = false;
        for (Recipe recipe : graph.inOrder()) {
            Arrays.fill(row, 0);
            join(recipe, row);
            for (Make make : recipe.makes()) {
                changed |= rows.join(row(make.item()), row);
            }
        }
        return changed;
    }

    private void join(Recipe recipe, long[] into) {
        if (recipe.uses().isEmpty()) {
            FactRows.joinInto(into, facts.unstated());
        }
        for (Use use : recipe.uses()) {
            rows.joinInto(into, row(use.item()));
            for (String substitute : use.substitutes()) {
                rows.joinInto(into, row(substitute));
            }
        }
    }

    /** The row of an item; one that is neither listed nor made is a stranger of which nothing is known. */
    private int row(String item) {
        int row = rows.find(item);
        if (row < 0) {
            row = rows.add(item);
            rows.replace(row, fromNothing(item));
        }
        return row;
    }

    /** What is so of an item whatever it is made of. */
    private long[] fromNothing(String item) {
        long[] row = rows.empty();
        Item own = listed.get(item);
        if (own != null) {
            FactRows.joinInto(row, facts.stated(own));
        } else if (graph.makersOf(item).isEmpty()) {
            FactRows.joinInto(row, facts.unstated());
        }
        return row;
    }

    /** The roll-up of these recipes and items, where only what lies behind their changes is rolled up anew. */
    FactRoll with(RecipeGraph nowGraph, Map<String, Item> nowListed) {
        FactBits bits = listed == nowListed ? facts : new FactBits(nowListed.values());
        if (graph.hasLoops() || nowGraph.hasLoops() || !bits.areLike(facts)) {
            return of(nowGraph, nowListed, bits);
        }
        FactRoll roll = new FactRoll(nowGraph, nowListed, bits, new FactRows(rows));
        roll.since = Since.of(this, roll.rollAnew(touched(nowGraph, nowListed)));
        return roll;
    }

    /** The items whose facts may differ for another reason than that what they are made of differs. */
    private Set<String> touched(RecipeGraph nowGraph, Map<String, Item> nowListed) {
        Set<String> touched = new HashSet<>(MapChanges.between(listed, nowListed));
        touched.addAll(nowGraph.madeByWhatChangedFrom(graph));
        return touched;
    }

    /**
     * Takes the items themselves, then whatever is made of those that differ, makers before users; answers which differ.
     */
    private Set<String> rollAnew(Set<String> items) {
        Set<String> changed = new HashSet<>();
        SortedMap<Integer, Recipe> open = new TreeMap<>();
        Consumer<String> take = item -> {
            if (isOther(item)) {
                changed.add(item);
                graph.usersOf(item).forEach(user -> open.put(graph.order().place(user), user));
            }
        };
        items.forEach(take);
        while (!open.isEmpty()) {
            Recipe next = open.remove(open.firstKey());
            next.makes().stream().map(Make::item).forEach(take);
        }
        return changed;
    }

    /** Rolls up one item anew; whether it is another than before. */
    private boolean isOther(String item) {
        boolean isNew = rows.find(item) < 0;
        long[] fresh = fromNothing(item);
        graph.makersOf(item).forEach(maker -> join(maker, fresh));
        return rows.replace(row(item), fresh) || isNew;
    }

    /** The items of which other facts are so than in another roll-up; all of them where the bits mean something else. */
    public Set<String> changesFrom(FactRoll before) {
        return since.changes(before)
                .orElseGet(() -> facts.areLike(before.facts) ? rows.changesFrom(before.rows) : rows.items());
    }

    public FactBits facts() {
        return facts;
    }

    public RecipeGraph graph() {
        return graph;
    }

    /** What is so of an item. */
    public BitSet of(String item) {
        int row = rows.find(item);
        return row < 0 ? facts.unstated() : rows.get(row);
    }

    /** What is so of a recipe, whether or not it is one of the graph. */
    public BitSet of(Recipe recipe) {
        BitSet all = recipe.uses().isEmpty() ? facts.unstated() : new BitSet(facts.size());
        for (Use use : recipe.uses()) {
            all.or(of(use.item()));
            use.substitutes().forEach(substitute -> all.or(of(substitute)));
        }
        return all;
    }

    public boolean has(String item, int bit) {
        int row = rows.find(item);
        return row < 0 ? facts.unstated().get(bit) : rows.get(row, bit);
    }

    /** Whether an item has a fact by itself rather than from what it is made of. */
    public boolean states(String item, int bit) {
        Item own = listed.get(item);
        List<Recipe> makers = graph.makersOf(item);
        return own != null && facts.stated(own).get(bit)
                || own == null && makers.isEmpty()
                || makers.stream().anyMatch(maker -> maker.uses().isEmpty())
                        && facts.unstated().get(bit);
    }
}
