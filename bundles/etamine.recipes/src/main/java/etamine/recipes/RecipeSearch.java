package etamine.recipes;

import etamine.kitchen.recipe.Kind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.annotation.versioning.ProviderType;

/** Finds recipes by name, by what is in them and by the text of their steps, as somebody types. Thread-safe. */
@ProviderType
public interface RecipeSearch {

    /** The recipes that fit, best first: by name before by what is in them before by their steps. */
    List<Hit> find(Wanted wanted);

    /** The stations that recipes and steps name, in the order of the alphabet. */
    List<String> stations();

    /**
     * What is looked for; every part narrows it.
     *
     * @param text words that all occur somewhere in the recipe; empty for any
     * @param kinds of which kinds; empty for any
     * @param contains allergens it contains or may contain, all of them
     * @param free allergens it is known not to contain; where they are unknown it does not fit
     * @param costAtMost the most that a portion, or a batch where there is no portion, may cost; nothing fits whose cost
     *     is not known in full
     * @param station the station that makes it or does one of its steps; empty for any
     * @param untested whether only drafts are looked for
     * @param archived whether archived ones are looked for instead of the others
     * @param atMost how many to give
     */
    record Wanted(
            String text,
            Set<Kind> kinds,
            Set<String> contains,
            Set<String> free,
            Optional<BigDecimal> costAtMost,
            String station,
            boolean untested,
            boolean archived,
            int atMost) {
        /** Copies the sets. */
        public Wanted {
            kinds = Set.copyOf(kinds);
            contains = Set.copyOf(contains);
            free = Set.copyOf(free);
        }

        /** Everything that is not archived and has these words. */
        public static Wanted words(String text, int atMost) {
            return new Wanted(text, Set.of(), Set.of(), Set.of(), Optional.empty(), "", false, false, atMost);
        }
    }

    /**
     * A recipe that fits.
     *
     * @param recipe its id
     * @param name its name
     * @param place where the words were found
     * @param excerpt the text round the first word found elsewhere than in the name; empty else
     */
    record Hit(String recipe, String name, Place place, String excerpt) {}

    /** Where words were found, best first. */
    enum Place {
        /** In the recipe's name. */
        NAME,
        /** In the name of something it uses or makes. */
        ITEM,
        /** In its steps, stations, equipment or notes. */
        TEXT
    }
}
