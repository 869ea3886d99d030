package etamine.measures;

import java.math.RoundingMode;
import java.util.Map;

/** Sentences that name the equivalence to add. */
final class MissingMeasure {
    /** Grams of an example per microlitre: loosely filled, so that a US cup comes to 150 g. */
    private static final Ratio EXAMPLE_DENSITY = Ratio.of(634, 1_000_000);

    /** The same for what is measured in litres, which mostly is a liquid. */
    private static final Ratio WATER = Ratio.of(1, 1000);

    /** Grams of an example per word, so that nobody reads that a pinch weighs as much as an egg; from memory. */
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("pinch", "0.4"),
            Map.entry("dash", "0.6"),
            Map.entry("drop", "0.05"),
            Map.entry("leaf", "0.2"),
            Map.entry("sprig", "1"),
            Map.entry("stalk", "40"),
            Map.entry("stick", "60"),
            Map.entry("clove", "3"),
            Map.entry("sheet", "2"),
            Map.entry("slice", "25"),
            Map.entry("handful", "30"),
            Map.entry("bunch", "60"),
            Map.entry("head", "500"),
            Map.entry("can", "400"),
            Map.entry("jar", "350"),
            Map.entry("loaf", "800"),
            Map.entry("dozen", "720"));

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
                        .times(unit.system() == Unit.System.METRIC ? WATER : EXAMPLE_DENSITY)
                        .toDecimal(0, RoundingMode.UP)
                        .toPlainString()
                : WORDS.getOrDefault(unit.symbol(), unit.system() == Unit.System.OWN ? "20" : "60");
    }
}
