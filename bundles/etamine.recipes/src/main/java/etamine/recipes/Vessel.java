package etamine.recipes;

import etamine.measures.MeasureException;
import etamine.measures.Quantity;

/**
 * A mould, pan or container by what it holds.
 *
 * @param name how people call it, such as {@code GN 1/1 65 mm}
 * @param volume what it holds full to the brim
 * @param nominal whether the volume is reckoned from its outer size, so that the real one holds less
 */
public record Vessel(String name, Quantity volume, boolean nominal) {

    /** What stands beside every volume that is reckoned from an outer size. */
    public static final String CAUTION =
            "The volume is reckoned from the outer size; a real pan has walls and round corners and holds less.";

    /** Refuses what holds nothing. */
    public Vessel {
        if (volume.signum() <= 0) {
            throw new MeasureException("A vessel must hold more than nothing; check the size of “" + name + "”.");
        }
    }
}
