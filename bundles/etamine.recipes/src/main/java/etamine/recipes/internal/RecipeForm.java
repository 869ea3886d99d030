package etamine.recipes.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryMerge;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.storage.Codec;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A recipe as a document: its entry in the exchange form. */
final class RecipeForm implements Codec<Recipe> {
    /** Numbers keep the digits they were written with. */
    static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    @Override
    public Recipe read(String id, String json) {
        EntryReader entry = new EntryReader(node(json));
        Recipe recipe = new RecipeReading(entry).recipe();
        List<Trouble> troubles = entry.troubles();
        if (!troubles.isEmpty()) {
            throw new IllegalArgumentException(
                    troubles.get(0).pointer() + ": " + troubles.get(0).problem());
        }
        return recipe;
    }

    @Override
    public String write(Recipe recipe) {
        return form(recipe).toString();
    }

    /** The stored document with the recipe's present facts, keeping every member this program does not know. */
    String rewrite(String stored, Recipe recipe) {
        ObjectNode kept = node(stored);
        Recipe before = new RecipeReading(new EntryReader(kept)).recipe();
        return EntryMerge.apply(kept, form(before), form(recipe)).toString();
    }

    /** The recipe as nested maps and lists, in its exchange form. */
    static Map<?, ?> plain(Recipe recipe) {
        return JSON.convertValue(form(recipe), Map.class);
    }

    private static ObjectNode node(String json) {
        try {
            return JSON.readTree(json) instanceof ObjectNode object ? object : JSON.createObjectNode();
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("This is not JSON: " + e.getOriginalMessage(), e);
        }
    }

    private static ObjectNode form(Recipe recipe) {
        ObjectNode form = JSON.createObjectNode()
                .put("id", recipe.id())
                .put("name", recipe.name())
                .put("kind", word(recipe.kind()));
        form.set("uses", uses(recipe.uses()));
        form.set("makes", makes(recipe.makes()));
        recipe.portion().ifPresent(portion -> form.put("portion", portion.toString()));
        recipe.keeps().ifPresent(keeps -> form.put("keeps", keeps.toString()));
        if (recipe.tested() > 0) {
            form.put("tested", recipe.tested());
        }
        if (!recipe.steps().isEmpty()) {
            form.set("steps", steps(recipe.steps()));
        }
        recipe.menu().ifPresent(menu -> putMenu(form, menu));
        putText(form, "notes", recipe.notes());
        return form;
    }

    private static ArrayNode uses(List<Use> uses) {
        ArrayNode list = JSON.createArrayNode();
        for (Use use : uses) {
            ObjectNode line = list.addObject()
                    .put("item", use.item())
                    .put("quantity", use.quantity().toString());
            use.as().ifPresent(as -> line.put("as", as));
            line.put("basis", use.basis().name());
        }
        return list;
    }

    private static ArrayNode makes(List<Make> makes) {
        ArrayNode list = JSON.createArrayNode();
        for (Make make : makes) {
            ObjectNode line = list.addObject()
                    .put("item", make.item())
                    .put("quantity", make.quantity().toString());
            make.credit()
                    .ifPresent(credit -> line.putObject("credit")
                            .put("amount", credit.amount().toPlainString())
                            .put("per", credit.per().toString()));
        }
        return list;
    }

    private static ArrayNode steps(List<Step> steps) {
        ArrayNode list = JSON.createArrayNode();
        for (Step step : steps) {
            ObjectNode form = list.addObject().put("id", step.id()).put("text", step.text());
            putTime(form, "hands", step.hands());
            putTime(form, "unattended", step.unattended());
            putText(form, "equipment", step.equipment());
            if (!step.after().isEmpty()) {
                ArrayNode after = form.putArray("after");
                step.after().forEach(after::add);
            }
        }
        return list;
    }

    private static void putMenu(ObjectNode form, MenuPrice menu) {
        form.put("menuPrice", menu.price().toPlainString());
        putPercent(form, "taxPercent", menu.taxPercent());
        putPercent(form, "qFactorPercent", menu.qFactorPercent());
    }

    private static void putPercent(ObjectNode form, String member, BigDecimal percent) {
        if (percent.signum() != 0) {
            form.put(member, percent.toPlainString());
        }
    }

    private static void putTime(ObjectNode form, String member, Duration time) {
        if (!time.isZero()) {
            form.put(member, time.toString());
        }
    }

    private static void putText(ObjectNode form, String member, String text) {
        if (!text.isEmpty()) {
            form.put(member, text);
        }
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
