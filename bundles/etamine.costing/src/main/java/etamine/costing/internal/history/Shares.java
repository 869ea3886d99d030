package etamine.costing.internal.history;

import etamine.costing.Moved;
import etamine.costing.internal.engine.Reckoning;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;

/**
 * Takes a change apart among kinds of change: each gets the average, over all orders in which they can be made, of what it
 * adds (L. S. Shapley, "A Value for n-Person Games", 1953). The decimals add up to the change exactly.
 */
final class Shares {
    private Shares() {}

    /**
     * The share of each kind.
     *
     * @param values what the figure is for every set of kinds changed, by their bits; not numbers where it cannot be said
     */
    static double[] of(double[] values) {
        int kinds = Integer.numberOfTrailingZeros(values.length);
        double[] shares = new double[kinds];
        for (int kind = 0; kind < kinds; kind++) {
            int bit = 1 << kind;
            for (int set = 0; set < values.length; set++) {
                if ((set & bit) == 0) {
                    shares[kind] += weight(Integer.bitCount(set), kinds) * (values[set | bit] - values[set]);
                }
            }
        }
        return shares;
    }

    /** How often, among all orders of the kinds, exactly a given set of so many comes before the next one. */
    static double weight(int before, int kinds) {
        return (double) factorial(before) * factorial(kinds - 1 - before) / factorial(kinds);
    }

    private static long factorial(int n) {
        return n < 2 ? 1 : n * factorial(n - 1);
    }

    /** Engine numbers as decimals that add up to {@code sum}: what rounding leaves over goes to the largest. */
    static List<Money> exact(double[] parts, Money sum) {
        Currency currency = sum.currency();
        List<Money> exact = new ArrayList<>(Arrays.stream(parts)
                .mapToObj(part -> Reckoning.money(part, currency))
                .toList());
        BigDecimal rest = sum.amount();
        int largest = 0;
        for (int i = 0; i < exact.size(); i++) {
            rest = rest.subtract(exact.get(i).amount());
            if (Math.abs(parts[i]) > Math.abs(parts[largest])) {
                largest = i;
            }
        }
        if (!exact.isEmpty()) {
            exact.set(largest, exact.get(largest).plus(new Money(rest, currency)));
        }
        return exact;
    }

    /** Parts in the order price, yield, portion, recipe. */
    static Moved.Effects effects(List<Money> parts) {
        return new Moved.Effects(parts.get(0), parts.get(1), parts.get(2), parts.get(3));
    }
}
