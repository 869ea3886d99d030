package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Says what a schema wants in a sentence for the person who wrote the file. */
final class SchemaSentence {
    private static final int LONGEST_QUOTE = 60;
    private static final Map<String, String> TYPES = Map.of(
            "string", "text in quotes",
            "integer", "a whole number",
            "number", "a number",
            "boolean", "true or false",
            "array", "a list in [ ]",
            "object", "an object in { }",
            "null", "null");

    private final Error error;
    private final JsonNode limit;
    private final String description;

    private SchemaSentence(Error error, JsonNode schema) {
        this.error = error;
        String place = error.getSchemaLocation().getFragment().toString();
        JsonNode keyword = schema.at(place.startsWith("/") ? place : "/" + place);
        JsonNode around = schema.at(Pointers.parent(place.startsWith("/") ? place : "/" + place));
        this.limit = keyword;
        this.description = around.path("description").asText();
    }

    static Trouble of(Error error, JsonNode schema) {
        String pointer = error.getInstanceLocation().toString();
        if (error.getProperty() != null && error.getKeyword().matches("additionalProperties|unevaluatedProperties")) {
            pointer = Pointers.member(pointer, error.getProperty());
        }
        return new Trouble(pointer, new SchemaSentence(error, schema).sentence());
    }

    private String sentence() {
        return switch (error.getKeyword()) {
            case "required", "dependentRequired" -> "Add \"" + error.getProperty() + "\" here.";
            case "additionalProperties", "unevaluatedProperties" ->
                "Nothing here is called \"" + error.getProperty()
                        + "\"; correct its spelling, or start its name with x- to keep it as your own remark.";
            case "type" -> type();
            case "enum", "const" -> "Write one of " + allowed() + " instead of " + found() + ".";
            case "minimum", "exclusiveMinimum" -> "Write a number of " + bound("at least ", "more than ") + ".";
            case "maximum", "exclusiveMaximum" -> "Write a number of " + bound("at most ", "less than ") + ".";
            case "minItems" -> "Give at least " + limit.asText() + " here.";
            case "maxItems" -> "Give at most " + limit.asText() + " here.";
            case "uniqueItems" -> "Leave each of these in only once.";
            default -> described();
        };
    }

    private String type() {
        JsonNode value = error.getInstanceNode();
        if (limit.asText().equals("string") && value.isNumber()) {
            return "Write this number in quotes: \"" + value.asText() + "\"." + explained();
        }
        return "Write " + TYPES.getOrDefault(limit.asText(), limit.asText()) + " instead of " + found() + "."
                + explained();
    }

    private String described() {
        return description.isEmpty()
                ? found() + " does not fit here: " + error.getMessage() + "."
                : description + negative() + " Here stands " + found() + ".";
    }

    /** A minus in front of an amount is the commonest reason why it does not fit. */
    private String negative() {
        return error.getInstanceNode().asText().matches("-[0-9].*") && !description.contains("minus")
                ? " It cannot be less than zero."
                : "";
    }

    private String explained() {
        return description.isEmpty() ? "" : " " + description;
    }

    private String bound(String included, String excluded) {
        return (error.getKeyword().startsWith("exclusive") ? excluded : included).strip() + " " + limit.asText();
    }

    private String allowed() {
        if (!limit.isArray()) {
            return limit.asText();
        }
        List<String> words = new ArrayList<>();
        limit.forEach(word -> words.add(word.asText()));
        return String.join(", ", words);
    }

    private String found() {
        JsonNode value = error.getInstanceNode();
        if (value.isContainerNode()) {
            return value.isArray() ? "a list" : "an object";
        }
        String text = value.toString();
        return text.length() <= LONGEST_QUOTE
                ? text
                : String.format(Locale.ROOT, "%s…\" (%d characters)", text.substring(0, LONGEST_QUOTE), text.length());
    }
}
