package etamine.recipes;

import etamine.measures.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * How far a recipe is to be trusted: draft, tested, standardised. Standardised is what was made at least three times
 * with the same result and has equipment, yield, portion and control points written down (Institute of Child Nutrition,
 * theicn.org, on standardised recipes; National Food Service Management Institute, Measuring Success with Standardized
 * Recipes, 2002, p. 3 - secondary).
 *
 * @param level how far it has come
 * @param tries how often it was made with the same result
 * @param missing what is missing to be standardised, each as a sentence that says what to do; empty when it is
 * @param portions how many portions a batch gives; empty when not known
 */
public record Trust(Level level, int tries, List<String> missing, Optional<Ratio> portions) {

    /** Good tries from which a recipe can be standardised. */
    public static final int TRIES = 3;

    /** Portions from which a recipe counts as one for quantity; that alone does not make it standardised. */
    public static final int QUANTITY_PORTIONS = 25;

    /** Copies the list. */
    public Trust {
        missing = List.copyOf(missing);
    }

    /** Whether a batch is large enough to count as a recipe for quantity. */
    public boolean forQuantity() {
        return portions.filter(count -> count.compareTo(Ratio.of(QUANTITY_PORTIONS)) >= 0)
                .isPresent();
    }

    /** The steps of trust, lowest first. */
    public enum Level {
        /** Written, not made yet. */
        DRAFT,
        /** Made with the same result at least once. */
        TESTED,
        /** Made often enough, and everything that makes it repeatable is written down. */
        STANDARDISED
    }
}
