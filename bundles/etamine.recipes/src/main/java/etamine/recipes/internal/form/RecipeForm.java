package etamine.recipes.internal.form;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryMerge;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.recipe.Making;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.PairedDrink;
import etamine.kitchen.recipe.Recipe;
import etamine.storage.Codec;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A recipe as a document: its entry in the exchange form. What is not said is not written. */
public final class RecipeForm implements Codec<Recipe> {
    /** Numbers keep the digits they were written with. */
    public static final JsonMapper JSON = JsonMapper.builder()
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
    public String rewrite(String stored, Recipe recipe) {
        ObjectNode kept = node(stored);
        Recipe before = new RecipeReading(new EntryReader(kept)).recipe();
        return EntryMerge.apply(kept, form(before), form(recipe)).toString();
    }

    /** The recipe as nested maps and lists, in its exchange form. */
    public static Map<?, ?> plain(Recipe recipe) {
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
        form.set("uses", LineForm.uses(recipe.uses()));
        form.set("makes", LineForm.makes(recipe.makes()));
        recipe.portion().ifPresent(portion -> form.put("portion", portion.toString()));
        putMaking(form, recipe.making());
        TestForm.put(form, recipe.standing());
        if (!recipe.steps().isEmpty()) {
            form.set("steps", LineForm.steps(recipe.steps()));
        }
        recipe.menu().ifPresent(menu -> putMenu(form, menu));
        putDrinks(form, recipe.drinks());
        putText(form, "notes", recipe.notes());
        recipe.photo().ifPresent(photo -> form.put("photo", photo));
        return form;
    }

    private static void putMaking(ObjectNode form, Making making) {
        making.keeps().ifPresent(keeps -> form.put("keeps", keeps.toString()));
        if (making.whole()) {
            form.put("wholeBatches", true);
        }
        making.absorbs().ifPresent(water -> form.put("absorbs", water.toString()));
        making.reducesTo().ifPresent(share -> form.put("reducesTo", share.toString()));
        putText(form, "station", making.station());
    }

    private static void putMenu(ObjectNode form, MenuPrice menu) {
        form.put("menuPrice", menu.price().toPlainString());
        putNumber(form, "taxPercent", menu.taxPercent());
        putNumber(form, "qFactorPercent", menu.qFactorPercent());
        putNumber(form, "qFactorAmount", menu.qFactorAmount());
        putNumber(form, "packaging", menu.packaging());
        menu.targetFoodCostPercent().ifPresent(target -> form.put("targetFoodCostPercent", target.toPlainString()));
    }

    private static void putDrinks(ObjectNode form, List<PairedDrink> drinks) {
        if (drinks.isEmpty()) {
            return;
        }
        ArrayNode list = form.putArray("drinks");
        for (PairedDrink drink : drinks) {
            putText(list.addObject().put("recipe", drink.recipe()), "level", drink.level());
        }
    }

    private static void putNumber(ObjectNode form, String member, BigDecimal number) {
        if (number.signum() != 0) {
            form.put(member, number.toPlainString());
        }
    }

    static void putTime(ObjectNode form, String member, Duration time) {
        if (!time.isZero()) {
            form.put(member, time.toString());
        }
    }

    static void putText(ObjectNode form, String member, String text) {
        if (!text.isEmpty()) {
            form.put(member, text);
        }
    }

    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
