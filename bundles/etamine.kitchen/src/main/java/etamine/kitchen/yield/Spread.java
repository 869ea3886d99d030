package etamine.kitchen.yield;

import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Collection;
import java.util.Optional;

/**
 * What several measurements of one thing say together. Everything but a deviation that is no fraction is exact.
 *
 * @param n how many there are, at least one
 * @param mean their arithmetic mean
 * @param variance the mean square distance from it with n - 1 below the line; empty for a single measurement
 * @param least the smallest
 * @param greatest the largest
 */
public record Spread(int n, Ratio mean, Optional<Ratio> variance, Ratio least, Ratio greatest) {

    /** The spread of measurements; empty when there are none. */
    public static Optional<Spread> of(Collection<Ratio> measured) {
        if (measured.isEmpty()) {
            return Optional.empty();
        }
        Ratio count = Ratio.of(measured.size());
        Ratio mean = measured.stream().reduce(Ratio.ZERO, Ratio::plus).dividedBy(count);
        Ratio squares = measured.stream()
                .map(each -> each.minus(mean))
                .map(apart -> apart.times(apart))
                .reduce(Ratio.ZERO, Ratio::plus);
        Optional<Ratio> variance =
                measured.size() < 2 ? Optional.empty() : Optional.of(squares.dividedBy(count.minus(Ratio.ONE)));
        Ratio least = measured.stream().reduce(mean, Ratio::min);
        Ratio greatest = measured.stream().reduce(mean, Ratio::max);
        return Optional.of(new Spread(measured.size(), mean, variance, least, greatest));
    }

    /**
     * The sample standard deviation: exact where it is a fraction, else rounded to 34 digits; empty for a single
     * measurement, of which nobody can say how far it would differ from the next.
     */
    public Optional<Ratio> deviation() {
        return variance.map(Spread::root);
    }

    private static Ratio root(Ratio square) {
        BigInteger top = square.numerator().sqrt();
        BigInteger bottom = square.denominator().sqrt();
        Ratio root = Ratio.of(top, bottom);
        if (root.times(root).equals(square)) {
            return root;
        }
        BigDecimal decimal =
                new BigDecimal(square.numerator()).divide(new BigDecimal(square.denominator()), MathContext.DECIMAL128);
        return Ratio.of(decimal.sqrt(MathContext.DECIMAL128));
    }
}
