package etamine.kitchen.allergen;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What a list asks to declare together.
 *
 * @param id its identifier within the list
 * @param name what it is called
 * @param named whether the cereal, nut or species has to be named
 * @param members what belongs to it, and how the list stands to each
 */
public record Group(String id, String name, boolean named, Map<Substance, Standing> members) {

    /** Copies the map. */
    public Group {
        members = Map.copyOf(members);
    }

    /** A short name for narrow columns. */
    public String brief() {
        return id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
    }

    /** Whether it has any of these. */
    boolean hasAnyOf(Set<Substance> substances) {
        return substances.stream().anyMatch(members::containsKey);
    }

    /** How the list stands to the most pressing of these. */
    Standing standing(Set<Substance> substances) {
        return substances.stream()
                .filter(members::containsKey)
                .map(members::get)
                .min(Standing::compareTo)
                .orElse(Standing.OPEN);
    }
}
