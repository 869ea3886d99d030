package etamine.recipes.internal.book;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions;
import etamine.kitchen.item.Replacement;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.rule.RecipeRules;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Where recipes name an item: in what they use, make and weighed, and as what may stand in for something else. */
@Component
public final class RecipeMentions implements ItemMentions {
    private final RecipeShelf shelf;

    /** Looks through that shelf. */
    @Activate
    public RecipeMentions(@Reference RecipeShelf shelf) {
        this.shelf = shelf;
    }

    @Override
    public List<Mention> of(String item) {
        List<Mention> mentions = new ArrayList<>();
        for (Recipe recipe : shelf.graph().recipes().values()) {
            String how = how(recipe, item);
            if (!how.isEmpty()) {
                mentions.add(new Mention("recipe", recipe.id(), recipe.name() + ": " + how));
            }
        }
        return mentions;
    }

    private static String how(Recipe recipe, String item) {
        List<String> ways = new ArrayList<>();
        recipe.uses().stream()
                .filter(use -> use.item().equals(item))
                .map(RecipeMentions::line)
                .forEach(ways::add);
        if (recipe.uses().stream().anyMatch(use -> use.substitutes().contains(item))) {
            ways.add("may use it instead");
        }
        recipe.makes().stream()
                .filter(make -> make.item().equals(item))
                .map(make -> "makes " + make.quantity())
                .forEach(ways::add);
        boolean weighed = recipe.standing().tests().stream()
                .flatMap(test -> test.out().stream())
                .anyMatch(out -> out.item().equals(item));
        if (weighed && ways.isEmpty()) {
            ways.add("weighed in a test");
        }
        return String.join(", ", ways);
    }

    private static String line(Use use) {
        return "uses " + use.quantity() + use.as().map(as -> " " + as).orElse("");
    }

    @Override
    public int rewrite(Transaction transaction, Item from, Item into) {
        RecipeReplacement replacement = new RecipeReplacement(new Replacement(from, into));
        Map<String, Recipe> recipes = new TreeMap<>(shelf.graph().recipes());
        List<String> rewritten = new ArrayList<>();
        for (Document document : shelf.book().shelf(RecipeShelf.NAME).all()) {
            ObjectNode entry = EntryJson.read(document.json());
            if (replacement.applyTo(entry)) {
                String json = entry.toString();
                transaction.save(RecipeShelf.NAME, document.id(), document.revision(), json);
                recipes.computeIfPresent(
                        document.id(), (id, before) -> shelf.form().read(id, json));
                rewritten.add(document.id());
            }
        }
        refuseLoops(shelf.graph().with(recipes), rewritten);
        return rewritten.size();
    }

    private static void refuseLoops(RecipeGraph graph, List<String> rewritten) {
        rewritten.stream()
                .flatMap(id -> graph.loopThrough(id).stream())
                .findFirst()
                .ifPresent(loop -> {
                    throw new IllegalArgumentException(RecipeRules.loopText(loop));
                });
    }
}
