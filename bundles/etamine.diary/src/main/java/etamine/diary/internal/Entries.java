package etamine.diary.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.exchange.EntryJson;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** The documents of the diary: what their members mean and which identifiers they have. */
final class Entries {
    static final String COVERS = "covers";
    static final String MIX = "mix";
    static final String USE = "use";
    static final String SALES = "sales";

    private Entries() {}

    /** Covers of a day. */
    record Covers(LocalDate date, int covers) {}

    /** Portions of a recipe per cover. */
    record Mix(String recipe, Ratio perCover) {}

    static Covers covers(JsonNode node) {
        int covers = node.path("covers").intValue();
        return new Covers(date(node), notNegative(covers, "covers"));
    }

    static Mix mix(JsonNode node) {
        Ratio perCover = Ratio.parse(EntryJson.text(node, "perCover"));
        notNegative(perCover.signum(), "perCover");
        return new Mix(EntryJson.text(node, "recipe"), perCover);
    }

    static WrittenUse use(JsonNode node) {
        Quantity quantity = Quantity.parse(EntryJson.text(node, "quantity"));
        notNegative(quantity.signum(), "quantity");
        return new WrittenUse(date(node), EntryJson.text(node, "item"), quantity);
    }

    static String useId(LocalDate date, String item) {
        return date + "/" + item;
    }

    static ObjectNode fill(ObjectNode node, Covers covers) {
        return node.put("date", covers.date().toString()).put("covers", covers.covers());
    }

    static ObjectNode fill(ObjectNode node, Mix mix) {
        return node.put("recipe", mix.recipe()).put("perCover", mix.perCover().toString());
    }

    static ObjectNode fill(ObjectNode node, WrittenUse use) {
        return node.put("date", use.date().toString())
                .put("item", use.item())
                .put("quantity", use.quantity().toString());
    }

    static LocalDate date(JsonNode node) {
        String text = EntryJson.text(node, "date");
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException wrong) {
            throw new IllegalArgumentException("“" + text + "” is not a date; write it as 2026-11-27", wrong);
        }
    }

    static int notNegative(int value, String member) {
        if (value < 0) {
            throw new IllegalArgumentException("“" + member + "” must not be less than 0");
        }
        return value;
    }
}
