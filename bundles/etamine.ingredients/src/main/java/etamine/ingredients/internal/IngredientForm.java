package etamine.ingredients.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.ingredients.Ingredient;
import etamine.kitchen.exchange.EntryMerge;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Equivalence;
import etamine.measures.UnitPrice;
import etamine.storage.Codec;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** An ingredient as a document: its entry in the exchange form. */
final class IngredientForm implements Codec<Ingredient> {
    /** Numbers keep the digits they were written with. */
    static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    @Override
    public Ingredient read(String id, String json) {
        EntryReader entry = new EntryReader(node(json));
        Ingredient ingredient = new IngredientReading(entry).ingredient();
        List<Trouble> troubles = entry.troubles();
        if (!troubles.isEmpty()) {
            throw new IllegalArgumentException(
                    troubles.get(0).pointer() + ": " + troubles.get(0).problem());
        }
        return ingredient;
    }

    @Override
    public String write(Ingredient ingredient) {
        return form(ingredient).toString();
    }

    /** The stored document with the ingredient's present facts, keeping every member this program does not know. */
    String rewrite(String stored, Ingredient ingredient) {
        ObjectNode kept = node(stored);
        Ingredient before = new IngredientReading(new EntryReader(kept)).ingredient();
        return EntryMerge.apply(kept, form(before), form(ingredient)).toString();
    }

    private static ObjectNode node(String json) {
        try {
            return JSON.readTree(json) instanceof ObjectNode object ? object : JSON.createObjectNode();
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("This is not JSON: " + e.getOriginalMessage(), e);
        }
    }

    private static ObjectNode form(Ingredient ingredient) {
        Item item = ingredient.item();
        ObjectNode form = JSON.createObjectNode().put("id", item.id()).put("name", item.name());
        putText(form, "group", item.group());
        putText(form, "storage", item.storage());
        item.keeps().ifPresent(keeps -> form.put("keeps", keeps.toString()));
        form.put("countIn", item.countIn().symbol());
        putList(form, "measures", measures(item.measures()));
        putList(form, "preparations", preparations(ingredient));
        putList(form, "contains", words(item.allergens().contains()));
        putList(form, "mayContain", words(item.allergens().mayContain()));
        form.put("allergensKnown", item.allergens().known());
        item.writtenPrice().ifPresent(price -> form.set("price", price(price)));
        return form;
    }

    private static ArrayNode preparations(Ingredient ingredient) {
        ArrayNode list = JSON.createArrayNode();
        for (Preparation preparation : ingredient.item().preparations()) {
            ObjectNode form = list.addObject()
                    .put("name", preparation.name())
                    .put("yield", preparation.yield().toString());
            putList(form, "measures", measures(preparation.measures()));
            putText(form, "note", ingredient.yieldNotes().getOrDefault(preparation.name(), ""));
        }
        return list;
    }

    private static ArrayNode measures(List<Equivalence> measures) {
        ArrayNode list = JSON.createArrayNode();
        measures.forEach(measure -> list.addObject()
                .put("of", measure.of().toString())
                .put("is", measure.is().toString()));
        return list;
    }

    private static ArrayNode words(Collection<String> words) {
        ArrayNode list = JSON.createArrayNode();
        new TreeSet<>(words).forEach(list::add);
        return list;
    }

    private static ObjectNode price(UnitPrice price) {
        return JSON.createObjectNode()
                .put("amount", price.amount().toPlainString())
                .put("per", price.per().toString());
    }

    private static void putText(ObjectNode form, String member, String text) {
        if (!text.isEmpty()) {
            form.put(member, text);
        }
    }

    private static void putList(ObjectNode form, String member, JsonNode list) {
        if (!list.isEmpty()) {
            form.set(member, list);
        }
    }
}
