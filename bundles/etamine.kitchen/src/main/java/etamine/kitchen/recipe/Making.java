package etamine.kitchen.recipe;

import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.time.Period;
import java.util.Optional;

/**
 * How a batch behaves in the making.
 *
 * @param keeps how long the main thing keeps; a kitchen's own figure, never a safety limit
 * @param whole whether it is only made in whole batches
 * @param absorbs water taken up that is none of the lines, such as by rice or beans; for one batch
 * @param reducesTo what comes out over what went in where the recipe says so, such as 1/4 for a reduction; by weight, or
 *     by volume where everything is measured so
 * @param station the station that makes it; empty when not said
 */
public record Making(
        Optional<Period> keeps, boolean whole, Optional<Quantity> absorbs, Optional<Ratio> reducesTo, String station) {

    /** Nothing said of it. */
    public static final Making PLAIN = new Making(Optional.empty(), false, Optional.empty(), Optional.empty(), "");

    /** The same with another keeping time. */
    public Making withKeeps(Optional<Period> changed) {
        return new Making(changed, whole, absorbs, reducesTo, station);
    }

    /** The same, made in whole batches or not. */
    public Making withWhole(boolean changed) {
        return new Making(keeps, changed, absorbs, reducesTo, station);
    }

    /** The same with other water taken up. */
    public Making withAbsorbs(Optional<Quantity> changed) {
        return new Making(keeps, whole, changed, reducesTo, station);
    }

    /** The same with another stated reduction. */
    public Making withReducesTo(Optional<Ratio> changed) {
        return new Making(keeps, whole, absorbs, changed, station);
    }

    /** The same at another station. */
    public Making withStation(String changed) {
        return new Making(keeps, whole, absorbs, reducesTo, changed);
    }
}
