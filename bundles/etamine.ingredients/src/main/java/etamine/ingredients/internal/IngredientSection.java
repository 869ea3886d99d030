package etamine.ingredients.internal;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.ingredients.Ingredient;
import etamine.kitchen.exchange.DocumentSection;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.item.Item;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code ingredients} of the exchange form. */
@Component
public final class IngredientSection implements ExchangeSection {
    private final IngredientShelf shelf;

    /** The section of that shelf. */
    @Activate
    public IngredientSection(@Reference IngredientShelf shelf) {
        this.shelf = shelf;
    }

    @Override
    public String name() {
        return IngredientShelf.NAME;
    }

    @Override
    public String module() {
        return IngredientShelf.MODULE;
    }

    @Override
    public String schema() {
        return SchemaWords.schema(IngredientSection.class, "/schema/ingredients.json");
    }

    @Override
    public Set<Class<?>> declares() {
        return Set.of(Item.class);
    }

    @Override
    public void recall(Facts facts) {
        shelf.items().forEach((id, item) -> facts.put(Item.class, id, item));
        shelf.merged().forEach((id, gone) -> facts.put(Item.class, id, gone.item()));
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<ExchangeEntry> entries = new ArrayList<>();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i).isObject()) {
                entries.add(entry("/" + i, section.get(i), facts));
            }
        }
        return entries;
    }

    private static ExchangeEntry entry(String pointer, JsonNode node, Facts facts) {
        EntryReader reader = new EntryReader(node);
        Ingredient ingredient = IngredientReading.of(reader);
        String id = ingredient.id();
        if (!id.isEmpty()) {
            facts.put(Item.class, id, ingredient.item());
        }
        List<ExchangeEntry.Trouble> troubles = new ArrayList<>(reader.troubles());
        if (troubles.isEmpty()) {
            IngredientRules.findings(ingredient).stream()
                    .filter(Finding::isError)
                    .map(Finding::trouble)
                    .forEach(troubles::add);
        }
        String json = node.toString();
        return new ReadEntry(
                pointer,
                id,
                troubles,
                known -> List.of(),
                transaction -> transaction.save(IngredientShelf.NAME, id, Document.ANY, json));
    }

    @Override
    public JsonNode dump() {
        return DocumentSection.dump(shelf.book(), IngredientShelf.NAME);
    }
}
