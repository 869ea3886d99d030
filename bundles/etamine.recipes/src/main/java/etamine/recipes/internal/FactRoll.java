package etamine.recipes.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The facts of every item of one moment, rolled up through the recipes: a row of bits for each item, joined in the order
 * of the graph, so that each recipe is taken once. Immutable once made.
 */
public final class FactRoll {
    private final RecipeGraph graph;
    private final Map<String, Item> listed;
    private final FactBits facts;
    private final Map<String, Integer> places;
    private final int width;
    private long[] rows;
    private int count;

    private FactRoll(RecipeGraph graph, Map<String, Item> listed) {
        this.graph = graph;
        this.listed = listed;
        facts = new FactBits(listed.values());
        width = (facts.size() + Long.SIZE - 1) / Long.SIZE;
        int likely = listed.size() + graph.recipes().size();
        places = new HashMap<>(likely * 2);
        rows = new long[Math.max(16, likely * width)];
    }

    static FactRoll of(RecipeGraph graph, Map<String, Item> listed) {
        FactRoll roll = new FactRoll(graph, listed);
        listed.forEach((id, item) -> roll.put(roll.row(id), roll.facts.stated(item)));
        graph.inOrder().forEach(recipe -> recipe.makes().forEach(make -> roll.row(make.item())));
        boolean changed = roll.pass();
        while (changed && graph.hasLoops()) {
            changed = roll.pass();
        }
        return roll;
    }

    private boolean pass() {
        long[] recipeRow = new long[width];
        boolean changed = false;
        for (Recipe recipe : graph.inOrder()) {
            join(recipe, recipeRow);
            for (Make make : recipe.makes()) {
                int at = row(make.item()) * width;
                for (int i = 0; i < width; i++) {
                    long joined = rows[at + i] | recipeRow[i];
                    changed |= joined != rows[at + i];
                    rows[at + i] = joined;
                }
            }
        }
        return changed;
    }

    private void join(Recipe recipe, long[] into) {
        Arrays.fill(into, 0);
        if (recipe.uses().isEmpty()) {
            orBits(into, facts.unstated());
        }
        for (Use use : recipe.uses()) {
            or(into, use.item());
            for (String substitute : use.substitutes()) {
                or(into, substitute);
            }
        }
    }

    private void or(long[] into, String item) {
        int at = row(item) * width;
        for (int i = 0; i < width; i++) {
            into[i] |= rows[at + i];
        }
    }

    private static void orBits(long[] into, BitSet bits) {
        long[] words = bits.toLongArray();
        for (int i = 0; i < words.length; i++) {
            into[i] |= words[i];
        }
    }

    /** The row of an item; one that is neither listed nor made is a stranger of which nothing is known. */
    private int row(String item) {
        Integer place = places.get(item);
        if (place != null) {
            return place;
        }
        int fresh = count++;
        places.put(item, fresh);
        if (rows.length < count * width) {
            rows = Arrays.copyOf(rows, count * width * 2);
        }
        if (!listed.containsKey(item) && graph.makersOf(item).isEmpty()) {
            put(fresh, facts.unstated());
        }
        return fresh;
    }

    private void put(int row, BitSet bits) {
        long[] words = bits.toLongArray();
        for (int i = 0; i < words.length; i++) {
            rows[row * width + i] |= words[i];
        }
    }

    public FactBits facts() {
        return facts;
    }

    public RecipeGraph graph() {
        return graph;
    }

    /** What is so of an item. */
    public BitSet of(String item) {
        Integer row = places.get(item);
        return row == null
                ? facts.unstated()
                : BitSet.valueOf(Arrays.copyOfRange(rows, row * width, (row + 1) * width));
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
        Integer row = places.get(item);
        return row == null
                ? facts.unstated().get(bit)
                : (rows[row * width + bit / Long.SIZE] >>> bit % Long.SIZE & 1) != 0;
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
