package etamine.recipes.ui.internal;

import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.item.Allergens;
import etamine.measures.MeasureException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The allergens of a new ingredient in one line, such as {@code wheat, may contain mustard}; {@code none} says so too. */
final class AllergenEntry {
    static final String EXAMPLE = "none, or: wheat, may contain mustard";
    private static final String MAY = "may contain ";

    private AllergenEntry() {}

    /** What is written; nothing written leaves them unknown. */
    static Allergens read(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        if (text.isEmpty()) {
            return Allergens.unknown();
        }
        Set<String> contains = new TreeSet<>();
        Set<String> mayContain = new TreeSet<>();
        for (String part : text.equals("none") ? new String[0] : text.split("[,;]")) {
            String word = part.strip();
            boolean may = word.startsWith(MAY);
            if (!word.isEmpty()) {
                (may ? mayContain : contains).add(known(may ? word.substring(MAY.length()) : word));
            }
        }
        return new Allergens(contains, mayContain, true, Map.of(), Optional.empty());
    }

    private static String known(String word) {
        Allergen read = Allergen.of(word.strip());
        if (read.substance().isEmpty()) {
            throw new MeasureException("No list of allergens knows \u201c" + word.strip()
                    + "\u201d; write words such as celery, milk or hazelnut, or leave it empty.");
        }
        return word.strip();
    }
}
