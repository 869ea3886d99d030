package etamine.ingredients.internal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.ingredients.Ingredient;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.measures.Equivalence;
import etamine.measures.UnitPrice;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** An ingredient as its entry in the exchange form. */
final class IngredientForm {
    private IngredientForm() {}

    static ObjectNode of(Ingredient ingredient) {
        Item item = ingredient.item();
        ObjectNode form = EntryJson.empty().put("id", item.id()).put("name", item.name());
        EntryJson.put(form, "group", item.group());
        EntryJson.put(form, "storage", item.storage());
        item.keeps().ifPresent(keeps -> form.put("keeps", keeps.toString()));
        form.put("countIn", item.countIn().symbol());
        EntryJson.put(form, "measures", measures(item.measures()));
        EntryJson.put(form, "preparations", PreparationForm.of(ingredient));
        putAllergens(form, item.allergens());
        EntryJson.put(form, "suits", words(item.diet().suits()));
        EntryJson.put(form, "unsuited", words(item.diet().unsuited()));
        item.writtenPrice().ifPresent(price -> form.set("price", price(price)));
        EntryJson.put(form, "note", ingredient.note());
        ingredient.mergedInto().ifPresent(other -> form.put("mergedInto", other));
        return form;
    }

    private static void putAllergens(ObjectNode form, Allergens allergens) {
        EntryJson.put(form, "contains", words(allergens.contains()));
        EntryJson.put(form, "mayContain", words(allergens.mayContain()));
        form.put("allergensKnown", allergens.known());
        if (!allergens.named().isEmpty()) {
            ObjectNode names = form.putObject("allergenNames");
            new TreeMap<>(allergens.named()).forEach(names::put);
        }
        allergens.sulphites().ifPresent(amount -> form.put("sulphites", amount.toPlainString()));
    }

    static ArrayNode measures(List<Equivalence> measures) {
        ArrayNode list = EntryJson.empty().arrayNode();
        measures.forEach(measure -> list.addObject()
                .put("of", measure.of().toString())
                .put("is", measure.is().toString()));
        return list;
    }

    private static ArrayNode words(Collection<String> words) {
        ArrayNode list = EntryJson.empty().arrayNode();
        new TreeSet<>(words).forEach(list::add);
        return list;
    }

    private static ObjectNode price(UnitPrice price) {
        return EntryJson.empty()
                .put("amount", price.amount().toPlainString())
                .put("per", price.per().toString());
    }
}
