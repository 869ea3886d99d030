package etamine.costing.internal.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import etamine.measures.Money;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Taking a change apart: L. S. Shapley, "A Value for n-Person Games", 1953 - the formula; figures computed. */
class SharesTest {
    private static final Currency EUR = Currency.getInstance("EUR");

    /** 2 x 5 becomes 3 x 7: moving the first factor first adds 5, last 7; the second 4 or 6. */
    @Test
    void givesEachKindTheAverageOverAllOrders() {
        double[] shares = Shares.of(new double[] {10, 15, 14, 21});
        assertThat(shares).containsExactly(6, 5);
    }

    @Test
    void addsUpAndGivesNothingToWhatDoesNothing() {
        Random random = new Random(5);
        for (int round = 0; round < 200; round++) {
            double[] values = new double[16];
            for (int set = 0; set < 16; set++) {
                // The third kind changes nothing: sets that differ only in it have one value.
                values[set] = (set & 4) == 0 ? random.nextDouble() * 100 : values[set & ~4];
            }
            double[] shares = Shares.of(values);
            assertThat(shares[2]).isZero();
            assertThat(shares[0] + shares[1] + shares[3]).isCloseTo(values[15] - values[0], within(1e-9));
        }
    }

    @Test
    void exchangesTheSharesOfKindsThatAreExchanged() {
        double[] values = {1, 4, 2, 9};
        double[] exchanged = {1, 2, 4, 9};
        assertThat(Shares.of(values)[0]).isEqualTo(Shares.of(exchanged)[1]);
    }

    @Test
    void makesDecimalsThatAddUpToTheLastPlace() {
        Money sum = Money.of("1.00000000007", EUR);
        List<Money> parts = Shares.exact(new double[] {1 / 3.0, 1 / 3.0, 1 / 3.0 + 1e-7}, sum);
        assertThat(parts.stream().reduce(Money.zero(EUR), Money::plus)).isEqualTo(sum);
        assertThat(parts.get(0)).isEqualTo(Money.of("0.3333333333", EUR));
    }
}
