package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds members that a schema does not know but nearly does. Unknown members are kept, because somebody may need them;
 * but {@code mayContian} kept in silence would hide an allergen.
 */
final class Misspellings {
    private static final int LONG_NAME = 6;

    private final JsonNode schema;
    private final List<Trouble> troubles = new ArrayList<>();

    private Misspellings(JsonNode schema) {
        this.schema = schema;
    }

    static List<Trouble> in(JsonNode value, JsonNode schema) {
        Misspellings misspellings = new Misspellings(schema);
        misspellings.walk(value, schema, "");
        return misspellings.troubles;
    }

    private void walk(JsonNode value, JsonNode rule, String pointer) {
        JsonNode resolved = resolve(rule);
        if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                walk(value.get(i), resolved.path("items"), pointer + '/' + i);
            }
        } else if (value.isObject() && resolved.path("properties").isObject()) {
            JsonNode known = resolved.path("properties");
            value.properties().forEach(member -> {
                String place = Pointers.member(pointer, member.getKey());
                if (known.has(member.getKey())) {
                    walk(member.getValue(), known.get(member.getKey()), place);
                } else if (!member.getKey().startsWith("x-")) {
                    near(member.getKey(), known)
                            .ifPresent(meant -> troubles.add(new Trouble(place, sentence(member.getKey(), meant))));
                }
            });
        }
    }

    static String sentence(String name, String meant) {
        return "Nothing here is called \"" + name + "\"; write \"" + meant
                + "\", or start the name with x- to keep it as your own remark.";
    }

    private JsonNode resolve(JsonNode rule) {
        String reference = rule.path("$ref").asText();
        return reference.startsWith("#/") ? schema.at(reference.substring(1)) : rule;
    }

    private static Optional<String> near(String name, JsonNode known) {
        List<String> names = new ArrayList<>();
        known.fieldNames().forEachRemaining(names::add);
        return near(name, names);
    }

    /** The known name that a name was probably meant to be. */
    static Optional<String> near(String name, Collection<String> known) {
        return known.stream()
                .filter(each -> distance(name.toLowerCase(Locale.ROOT), each.toLowerCase(Locale.ROOT))
                        <= (each.length() < LONG_NAME ? 1 : 2))
                .findFirst();
    }

    /** Letters to add, drop, change or swap with their neighbour to get from one word to the other. */
    static int distance(String a, String b) {
        int[][] steps = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : least(steps, a, b, i, j);
            }
        }
        return steps[a.length()][b.length()];
    }

    private static int least(int[][] steps, String a, String b, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(Math.min(steps[i - 1][j], steps[i][j - 1]) + 1, steps[i - 1][j - 1] + change);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, steps[i - 2][j - 2] + 1) : least;
    }
}
