package etamine.measures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Grams and kilograms, millilitres and litres, with no more places than their size asks for. */
final class MetricText {
    /** How far a large unit or a number of pieces may be off: half a hundredth. */
    static final Ratio FINE = Ratio.of(1, 200);
    /** How far a small unit may be off: a fiftieth, so that a US teaspoon reads 5 ml and 12.5 g stays 12.5 g. */
    private static final Ratio COARSE = Ratio.of(1, 50);

    private static final Ratio THOUSAND = Ratio.of(1_000);

    private MetricText() {}

    /** In the small unit below a thousand of it, else in the large one. */
    static String of(Quantity quantity, Unit small, Unit large) {
        Ratio amount = quantity.in(small).amount();
        if (amount.plus(Ratio.of(1, 2)).compareTo(THOUSAND) < 0) {
            return within(amount, COARSE) + " " + small;
        }
        return within(quantity.in(large).amount(), FINE) + " " + large;
    }

    /** The decimal with the fewest places that is off by no more than a share of the amount, which is not zero. */
    static String within(Ratio amount, Ratio share) {
        Ratio most = amount.times(share);
        for (int places = 0; ; places++) {
            BigDecimal rounded = amount.toDecimal(places, RoundingMode.HALF_UP);
            if (Ratio.of(rounded).minus(amount).abs().compareTo(most) <= 0) {
                return rounded.stripTrailingZeros().toPlainString();
            }
        }
    }
}
