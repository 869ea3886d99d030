package etamine.recipes.internal.linked;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Values of JSON-LD as they are met: one or many, text or an object with a text, with HTML in it or not. */
final class LdWords {
    /** The terms of schema.org that this program writes and reads; see schema.org/Recipe and schema.org/HowTo. */
    static final Set<String> READ = Set.of(
            "@context",
            "@type",
            "@id",
            "name",
            "description",
            "image",
            "recipeIngredient",
            "recipeInstructions",
            "recipeYield",
            "prepTime",
            "cookTime",
            "performTime",
            "totalTime",
            "tool",
            "suitableForDiet",
            "recipeCategory",
            LdWords.ENTRY,
            LdWords.NAMES);

    /** The member with the whole recipe in this program's own form. */
    static final String ENTRY = "etamine:recipe";

    /** The member with the names of the items it speaks of. */
    static final String NAMES = "etamine:names";

    private static final int LONGEST = 10_000;
    private static final String SCHEMA = "schema.org/";

    private LdWords() {}

    /** Whether the node is of that type of schema.org, however the type is written. */
    static boolean is(JsonNode node, String type) {
        for (JsonNode each : many(node.path("@type"))) {
            String name = each.asText("");
            int from = name.indexOf(SCHEMA);
            String bare = from >= 0 ? name.substring(from + SCHEMA.length()) : name.replaceFirst("^schema:", "");
            if (bare.equals(type)) {
                return true;
            }
        }
        return false;
    }

    /** The values of a member that may have one value or a list. */
    static List<JsonNode> many(JsonNode value) {
        List<JsonNode> values = new ArrayList<>();
        if (value.isArray()) {
            value.forEach(values::add);
        } else if (!value.isMissingNode() && !value.isNull()) {
            values.add(value);
        }
        return values;
    }

    /** The text of a value, of its {@code @value}, {@code text} or {@code name}; empty when it has none. */
    static String text(JsonNode value) {
        if (value.isTextual() || value.isNumber()) {
            return plain(value.asText());
        }
        if (value.isObject()) {
            for (String member : List.of("@value", "text", "name")) {
                if (value.path(member).isTextual()) {
                    return plain(value.path(member).asText());
                }
            }
        }
        return value.isArray() && !value.isEmpty() ? text(value.get(0)) : "";
    }

    /** A duration by ISO 8601; one that is not is remarked. */
    static Optional<Duration> time(JsonNode node, String member, List<String> remarks) {
        String written = text(node.path(member));
        if (written.isEmpty()) {
            return Optional.empty();
        }
        try {
            Duration time = Duration.parse(written.toUpperCase(Locale.ROOT).replaceFirst("^P0Y0M", "P"));
            if (!time.isNegative()) {
                return Optional.of(time);
            }
        } catch (DateTimeException unreadable) {
            // said below
        }
        remarks.add("The " + member + " “" + shown(written) + "” is not a time; it stands in the notes.");
        return Optional.empty();
    }

    /** As much of a foreign text as fits in a sentence. */
    static String shown(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        return line.length() <= 80 ? line : line.substring(0, line.offsetByCodePoints(0, 70)) + "…";
    }

    /** Text without tags, entities and control characters, cut at what a document holds. */
    static String plain(String html) {
        String cut = html.length() > LONGEST * 4 ? html.substring(0, LONGEST * 4) : html;
        String text = HtmlPlain.of(cut);
        return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    }
}
