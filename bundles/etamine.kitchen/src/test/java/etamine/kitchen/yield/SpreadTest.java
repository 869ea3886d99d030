package etamine.kitchen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.measures.Ratio;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SpreadTest {

    private static Spread of(String... measured) {
        return Spread.of(Stream.of(measured).map(Ratio::parse).toList()).orElseThrow();
    }

    @Test
    void givesMeanAndBoundsExactly() {
        Spread spread = of("0.74", "0.7", "0.78", "3/4");

        assertThat(spread.n()).isEqualTo(4);
        assertThat(spread.mean()).isEqualTo(Ratio.parse("0.7425"));
        assertThat(spread.least()).isEqualTo(Ratio.parse("0.7"));
        assertThat(spread.greatest()).isEqualTo(Ratio.parse("0.78"));
    }

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.6: s is the root of the squares over n - 1 (secondary). */
    @Test
    void dividesByOneLessThanTheNumberOfMeasurements() {
        // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, squares 32, so the variance is 32 / 7 (computed)
        Spread spread = of("2", "4", "4", "4", "5", "5", "7", "9");

        assertThat(spread.mean()).isEqualTo(Ratio.of(5));
        assertThat(spread.variance()).contains(Ratio.of(32, 7));
        assertThat(spread.deviation().orElseThrow().toDecimal(10, RoundingMode.HALF_UP))
                .isEqualByComparingTo("2.1380899353");
    }

    @Test
    void givesADeviationThatIsAFractionExactly() {
        // 0.5, 0.6, 0.7: squares 0.02 over 2, root 0.1 (computed)
        assertThat(of("0.5", "0.6", "0.7").deviation()).contains(Ratio.parse("0.1"));
        assertThat(of("1/3", "1/3").deviation()).contains(Ratio.ZERO);
    }

    @Test
    void claimsNoSpreadForASingleMeasurement() {
        assertThat(of("0.8").mean()).isEqualTo(Ratio.parse("0.8"));
        assertThat(of("0.8").deviation()).isEmpty();
    }

    @Test
    void isNothingWithoutMeasurements() {
        assertThat(Spread.of(List.of())).isEmpty();
    }
}
