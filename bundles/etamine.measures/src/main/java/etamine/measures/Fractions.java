package etamine.measures;

import java.math.BigInteger;
import java.util.List;

/** The fractions measuring cups and spoons come in: halves, thirds, quarters and eighths. */
final class Fractions {
    private static final List<Ratio> STEPS = List.of(
            Ratio.ZERO,
            Ratio.of(1, 8),
            Ratio.of(1, 4),
            Ratio.of(1, 3),
            Ratio.of(3, 8),
            Ratio.of(1, 2),
            Ratio.of(5, 8),
            Ratio.of(2, 3),
            Ratio.of(3, 4),
            Ratio.of(7, 8),
            Ratio.ONE);

    private Fractions() {}

    /** True when the amount is whole or has one of these fractions. */
    static boolean usual(Ratio amount) {
        return amount.isWhole() || nearest(amount).equals(amount);
    }

    /** The nearest amount with one of these fractions; the larger of two equally near. */
    static Ratio nearest(Ratio amount) {
        Ratio whole = amount.wholePart();
        Ratio rest = amount.minus(whole);
        Ratio best = Ratio.ZERO;
        for (Ratio step : STEPS) {
            if (step.minus(rest).abs().compareTo(best.minus(rest).abs()) <= 0) {
                best = step;
            }
        }
        return whole.plus(best);
    }

    /** The nearest multiple of a step; the larger of two equally near. */
    static Ratio nearest(Ratio amount, Ratio step) {
        return amount.dividedBy(step).plus(Ratio.of(1, 2)).wholePart().times(step);
    }

    /** A mixed number such as 1 1/2. */
    static String text(Ratio amount) {
        BigInteger[] parts = amount.numerator().divideAndRemainder(amount.denominator());
        if (parts[1].signum() == 0) {
            return parts[0].toString();
        }
        String fraction = parts[1] + "/" + amount.denominator();
        return parts[0].signum() == 0 ? fraction : parts[0] + " " + fraction;
    }
}
