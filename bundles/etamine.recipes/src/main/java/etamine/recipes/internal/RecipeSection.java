package etamine.recipes.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code recipes} of the exchange form. */
@Component
public final class RecipeSection implements ExchangeSection {
    private final RecipeShelf shelf;

    /** The section of that shelf. */
    @Activate
    public RecipeSection(@Reference RecipeShelf shelf) {
        this.shelf = shelf;
    }

    @Override
    public String name() {
        return RecipeShelf.NAME;
    }

    @Override
    public String module() {
        return RecipeShelf.MODULE;
    }

    @Override
    public String schema() {
        return SchemaWords.schema(RecipeSection.class, "/schema/recipes.json");
    }

    @Override
    public Set<String> after() {
        return Set.of("ingredients");
    }

    @Override
    public Set<Class<?>> declares() {
        return Set.of(Recipe.class);
    }

    @Override
    public void recall(Facts facts) {
        shelf.graph().recipes().forEach((id, recipe) -> facts.put(Recipe.class, id, recipe));
        putMade(facts, shelf.graph());
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<ExchangeEntry> entries = new ArrayList<>();
        FileChecks checks = new FileChecks();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i).isObject()) {
                entries.add(entry("/" + i, section.get(i), facts, checks));
            }
        }
        putMade(facts, RecipeGraph.of(facts.all(Recipe.class)));
        return entries;
    }

    private static ExchangeEntry entry(String pointer, JsonNode node, Facts facts, FileChecks checks) {
        EntryReader reader = new EntryReader(node);
        RecipeReading reading = new RecipeReading(reader);
        Recipe recipe = reading.recipe();
        if (!recipe.id().isEmpty()) {
            facts.put(Recipe.class, recipe.id(), recipe);
        }
        String json = node.toString();
        return new ReadEntry(
                pointer,
                recipe.id(),
                reader.troubles(),
                known -> checks.of(recipe, reading.pointers(), known),
                transaction -> transaction.save(RecipeShelf.NAME, recipe.id(), Document.ANY, json));
    }

    /**
     * Declares what recipes make, so that offers and pars of it are understood; listed ingredients stay as they are.
     * Without an ingredient list nothing is declared, since then no reference to an item can be checked.
     */
    private static void putMade(Facts facts, RecipeGraph graph) {
        if (!facts.covers(Item.class)) {
            return;
        }
        Map<String, Item> items = facts.all(Item.class);
        MadeThings.of(graph, FileChecks.listed(items)).forEach((id, item) -> {
            if (!items.containsKey(id) || items.get(id).made()) {
                facts.put(Item.class, id, item);
            }
        });
    }

    @Override
    public JsonNode dump() {
        List<Document> documents = shelf.book().shelf(RecipeShelf.NAME).all();
        if (documents.isEmpty()) {
            return MissingNode.getInstance();
        }
        ArrayNode section = RecipeForm.JSON.createArrayNode();
        for (Document document : documents) {
            try {
                section.add(RecipeForm.JSON.readTree(document.json()));
            } catch (JsonProcessingException damaged) {
                throw new IllegalStateException("The recipe " + document.id() + " is not JSON.", damaged);
            }
        }
        return section;
    }
}
