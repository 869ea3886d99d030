package etamine.kitchen.item;

import etamine.base.Explanation;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is known of an item's allergens. Unknown is not absent.
 *
 * @param contains allergens it contains, in the kitchen's words
 * @param mayContain allergens it may contain through handling
 * @param known whether somebody has established both lists
 * @param named the species, nut or cereal behind a word of the lists, such as {@code hake} behind {@code fish}
 * @param sulphites how much sulphite it has ready to eat, as total SO2 in mg/kg or mg/l; empty when not measured
 */
public record Allergens(
        Set<String> contains,
        Set<String> mayContain,
        boolean known,
        Map<String, String> named,
        Optional<BigDecimal> sulphites) {

    /** Copies the collections. */
    public Allergens {
        contains = Set.copyOf(contains);
        mayContain = Set.copyOf(mayContain);
        named = Map.copyOf(named);
    }

    /** Allergens of which neither species nor amounts are known. */
    public Allergens(Set<String> contains, Set<String> mayContain, boolean known) {
        this(contains, mayContain, known, Map.of(), Optional.empty());
    }

    /** What stands wherever allergens are shown. */
    public static final String CAUTION =
            "Allergens are as written in this book. Unknown is not absent; local rules decide what must be declared.";

    /** Both lists in words; what is not established is said to be unknown. */
    public String inWords() {
        List<String> words = new ArrayList<>();
        if (!contains.isEmpty()) {
            words.add(String.join(", ", new TreeSet<>(contains)));
        }
        if (!mayContain.isEmpty()) {
            words.add("may contain " + String.join(", ", new TreeSet<>(mayContain)));
        }
        if (!known) {
            words.add(words.isEmpty() ? "unknown" : "rest unknown");
        }
        return words.isEmpty() ? "none listed" : String.join("; ", words);
    }

    /** Each allergen with whether it is contained, under the caution. */
    public Explanation explained() {
        List<Explanation> parts = new ArrayList<>();
        new TreeSet<>(contains).forEach(word -> parts.add(Explanation.leaf(word, "contained", "")));
        new TreeSet<>(mayContain).forEach(word -> parts.add(Explanation.leaf(word, "possible", "")));
        String rest = parts.isEmpty() ? "unknown" : "rest unknown";
        String none = parts.isEmpty() ? "none listed" : "";
        return new Explanation("Allergens", known ? none : rest, CAUTION, parts, Optional.empty());
    }

    /** Nothing established yet. */
    public static Allergens unknown() {
        return new Allergens(Set.of(), Set.of(), false);
    }
}
