package etamine.measures;

import java.util.List;

/** The outcome of a conversion: the result with the path taken, or what is missing. */
public sealed interface Conversion {

    /**
     * It worked.
     *
     * @param quantity the same amount in the unit asked for, exact
     * @param path the equivalences used, in order; empty when the units share a dimension
     */
    record Converted(Quantity quantity, List<Equivalence> path) implements Conversion {}

    /**
     * No sound path.
     *
     * @param from the unit there is
     * @param to the unit asked for
     * @param text a sentence naming the equivalence to add, such as {@code Add what 1 cup weighs.}
     */
    record Missing(Unit from, Unit to, String text) implements Conversion {}

    /** The converted quantity, or a {@link MeasureException} with the missing equivalence. */
    default Quantity orThrow() {
        if (this instanceof Converted converted) {
            return converted.quantity();
        }
        throw new MeasureException(((Missing) this).text());
    }
}
