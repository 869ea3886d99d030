package etamine.recipes.internal;

import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Checks the recipes of one file beside one another and the book; the graph of both is built at the first check. */
final class FileChecks {
    private @Nullable Beside beside;

    private record Beside(RecipeGraph graph, ItemView items) {}

    List<Trouble> of(Recipe recipe, LinePointers pointers, Facts facts) {
        Beside all = beside;
        if (all == null) {
            all = beside(facts);
            beside = all;
        }
        return RecipeRules.of(recipe, all.graph, all.items, pointers).stream()
                .filter(finding -> finding.grade() != Finding.Grade.DOUBTFUL)
                .map(Finding::trouble)
                .toList();
    }

    private static Beside beside(Facts facts) {
        RecipeGraph graph = RecipeGraph.of(facts.all(Recipe.class));
        ItemView declared = new ItemView(id -> Optional.empty(), facts.covers(Item.class));
        return new Beside(graph, declared.with(graph, listed(facts.all(Item.class))));
    }

    /** The items that are on the ingredient list. */
    static Map<String, Item> listed(Map<String, Item> items) {
        Map<String, Item> listed = new TreeMap<>(items);
        listed.values().removeIf(Item::made);
        return listed;
    }
}
