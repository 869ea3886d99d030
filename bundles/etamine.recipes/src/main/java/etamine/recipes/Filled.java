package etamine.recipes;

import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.util.List;

/**
 * Some vessels of one kind, each filled to the same level.
 *
 * @param count how many
 * @param vessel which
 * @param level how much of its volume is filled, more than 0 and at most 1
 */
public record Filled(Ratio count, Vessel vessel, Ratio level) {

    /** Refuses none at all and levels that cannot be. */
    public Filled {
        if (count.signum() <= 0) {
            throw new MeasureException("Say how many vessels, such as 12 x 130 ml.");
        }
        if (level.signum() <= 0 || level.compareTo(Ratio.ONE) > 0) {
            throw new MeasureException("A vessel is filled to more than 0 % and at most 100 %, such as 80 %.");
        }
    }

    /** What all of them take together, in millilitres or the unit of the vessel. */
    public Quantity volume() {
        return vessel.volume().times(count).times(level);
    }

    /** What several kinds take together. */
    public static Quantity volume(List<Filled> vessels) {
        return vessels.stream()
                .map(Filled::volume)
                .reduce(Quantity::plus)
                .orElseThrow(() -> new MeasureException("Say which vessels, such as 12 x 130 ml."));
    }
}
