package etamine.recipes.internal.book;

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
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.internal.NamedPhotos;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.form.LinePointers;
import etamine.recipes.internal.form.RecipeForm;
import etamine.recipes.internal.form.RecipeReading;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code recipes} of the exchange form. */
@Component
public final class RecipeSection implements ExchangeSection {
    private final RecipeShelf shelf;
    private final NamedPhotos photos;

    /** The section of that shelf. */
    @Activate
    public RecipeSection(@Reference RecipeShelf shelf) {
        this.shelf = shelf;
        this.photos = new NamedPhotos(shelf);
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
        FileChecks.of(facts, shelf.graph()).declare(facts);
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<Read> recipes = new ArrayList<>();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i).isObject()) {
                recipes.add(recipe("/" + i, section.get(i), facts));
            }
        }
        FileChecks checks = FileChecks.of(facts, RecipeGraph.of(facts.all(Recipe.class)));
        checks.declare(facts);
        return recipes.stream().map(read -> read.entry(checks, photos)).toList();
    }

    private static Read recipe(String pointer, JsonNode node, Facts facts) {
        EntryReader reader = new EntryReader(node);
        RecipeReading reading = new RecipeReading(reader);
        Recipe recipe = reading.recipe();
        if (!recipe.id().isEmpty()) {
            facts.put(Recipe.class, recipe.id(), recipe);
        }
        return new Read(pointer, recipe, reading.pointers(), reader.troubles(), node.toString());
    }

    /** One entry before it is judged. */
    private record Read(
            String pointer, Recipe recipe, LinePointers places, List<ExchangeEntry.Trouble> troubles, String json) {
        ExchangeEntry entry(FileChecks checks, NamedPhotos photos) {
            return new ReadEntry(
                    pointer,
                    recipe.id(),
                    troubles,
                    facts -> checks.faults(recipe, places),
                    facts -> Stream.of(checks.doubts(recipe, places), NamedPhotos.doubts(recipe, facts))
                            .flatMap(List::stream)
                            .toList(),
                    transaction -> {
                        photos.follow(transaction, recipe.id(), recipe.photo());
                        transaction.save(RecipeShelf.NAME, recipe.id(), Document.ANY, json);
                    });
        }
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
