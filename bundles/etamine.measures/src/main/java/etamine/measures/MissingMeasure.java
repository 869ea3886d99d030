package etamine.measures;

import java.math.RoundingMode;

/** Sentences that name the equivalence to add. */
final class MissingMeasure {
    /** Grams of an example per microlitre: loosely filled, so that a US cup comes to 150 g. */
    private static final Ratio EXAMPLE_DENSITY = Ratio.of(634, 1_000_000);

    private MissingMeasure() {}

    /** Asks for the weight of one unit. */
    static String weight(Unit unit) {
        return "Add what 1 " + unit + " weighs, for example 1 " + unit + " = " + grams(unit) + " g.";
    }

    /** Asks for the link between two units, neither of which has a weight yet. */
    static String between(Unit from, Unit to) {
        boolean fromFills = from.dimension() == Dimension.VOLUME;
        if (fromFills || to.dimension() == Dimension.VOLUME) {
            Unit part = fromFills ? to : from;
            Unit space = fromFills ? from : to;
            return "Add what 1 " + part + " weighs and what 1 " + space + " weighs, or how much 1 " + part
                    + " fills, for example 1 " + part + " = 100 ml.";
        }
        return "Add how many " + to + " make 1 " + from + ", for example 1 " + from + " = 6 " + to
                + ", or what 1 of each weighs.";
    }

    private static String grams(Unit unit) {
        return unit.dimension() == Dimension.VOLUME
                ? unit.inBase()
                        .times(EXAMPLE_DENSITY)
                        .toDecimal(0, RoundingMode.UP)
                        .toPlainString()
                : "60";
    }
}
