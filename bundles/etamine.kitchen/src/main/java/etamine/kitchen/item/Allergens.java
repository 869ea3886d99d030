package etamine.kitchen.item;

import java.util.Set;

/**
 * What is known of an item's allergens. Unknown is not absent.
 *
 * @param contains allergens it contains, in the kitchen's words
 * @param mayContain allergens it may contain through handling
 * @param known whether somebody has established both lists
 */
public record Allergens(Set<String> contains, Set<String> mayContain, boolean known) {

    /** Copies the sets. */
    public Allergens {
        contains = Set.copyOf(contains);
        mayContain = Set.copyOf(mayContain);
    }

    /** Nothing established yet. */
    public static Allergens unknown() {
        return new Allergens(Set.of(), Set.of(), false);
    }
}
