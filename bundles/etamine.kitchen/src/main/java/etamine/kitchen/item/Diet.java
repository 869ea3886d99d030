package etamine.kitchen.item;

import java.util.Set;

/**
 * Which ways of eating an item fits, in the kitchen's words such as {@code vegetarian} or {@code vegan}. A word in
 * neither set is unknown, which is not a yes.
 *
 * @param suits ways of eating it is known to fit
 * @param unsuited ways of eating it is known not to fit
 */
public record Diet(Set<String> suits, Set<String> unsuited) {

    /** Copies the sets. */
    public Diet {
        suits = Set.copyOf(suits);
        unsuited = Set.copyOf(unsuited);
    }

    /** Nothing established. */
    public static final Diet UNKNOWN = new Diet(Set.of(), Set.of());
}
