package etamine.recipes.internal.book;

import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.MadeThings;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.form.LinePointers;
import etamine.recipes.internal.rule.Finding;
import etamine.recipes.internal.rule.RecipeRules;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The recipes of one file beside one another and the book: their graph and what they make, worked out once for
 * everything that a load asks of them.
 */
final class FileChecks {
    private final RecipeGraph graph;
    private final Map<String, Item> made;
    private final ItemView items;
    private final Map<Recipe, List<Finding>> findings = new IdentityHashMap<>();

    private FileChecks(RecipeGraph graph, Map<String, Item> listed, boolean complete) {
        this.graph = graph;
        this.made = MadeThings.of(graph, listed);
        this.items = new ItemView(id -> Optional.empty(), complete).withMade(made, listed);
    }

    /** Of the recipes and items that are declared so far; ingredients are read before recipes. */
    static FileChecks of(Facts facts, RecipeGraph graph) {
        return new FileChecks(graph, listed(facts.all(Item.class)), facts.covers(Item.class));
    }

    /** What keeps an entry from being written. */
    List<Trouble> faults(Recipe recipe, LinePointers pointers) {
        return troubles(recipe, pointers, false);
    }

    /** What may be meant, and is written. */
    List<Trouble> doubts(Recipe recipe, LinePointers pointers) {
        return troubles(recipe, pointers, true);
    }

    private List<Trouble> troubles(Recipe recipe, LinePointers pointers, boolean doubtful) {
        return findings.computeIfAbsent(recipe, key -> RecipeRules.of(key, graph, items, pointers)).stream()
                .filter(finding -> finding.grade() == Finding.Grade.DOUBTFUL == doubtful)
                .map(Finding::trouble)
                .toList();
    }

    /**
     * Declares what recipes make, so that offers and pars of it are understood; listed ingredients stay as they are.
     * Without an ingredient list nothing is declared, since then no reference to an item can be checked.
     */
    void declare(Facts facts) {
        if (!facts.covers(Item.class)) {
            return;
        }
        Map<String, Item> known = facts.all(Item.class);
        made.forEach((id, item) -> {
            if (!known.containsKey(id) || known.get(id).made()) {
                facts.put(Item.class, id, item);
            }
        });
    }

    private static Map<String, Item> listed(Map<String, Item> items) {
        Map<String, Item> listed = new TreeMap<>(items);
        listed.values().removeIf(Item::made);
        return listed;
    }
}
