package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RatioTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
            # left, right, sum,   difference, product, quotient
            1/3,    1/6,   1/2,   1/6,        1/18,    2
            0.1,    0.2,   0.3,   -0.1,       0.02,    0.5
            -3/4,   1/4,   -0.5,  -1,         -3/16,   -3
            7,      -2,    5,     9,          -14,     -3.5
            """)
    void calculatesExactly(String left, String right, String sum, String difference, String product, String quotient) {
        Ratio a = Ratio.parse(left);
        Ratio b = Ratio.parse(right);
        assertThat(a.plus(b)).isEqualTo(Ratio.parse(sum));
        assertThat(a.minus(b)).isEqualTo(Ratio.parse(difference));
        assertThat(a.times(b)).isEqualTo(Ratio.parse(product));
        assertThat(a.dividedBy(b)).isEqualTo(Ratio.parse(quotient));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0.5,     1/2
            3/4,     3/4
            1 1/2,   3/2
            ½,       1/2
            1½,      3/2
            1 ½,     3/2
            ⅔,       2/3
            2⅞,      23/8
            1⁄8,     1/8
            .25,     1/4
            -1 1/2,  -3/2
            −2,      -2
            +3,      3
            6/4,     3/2
            007,     7
            """)
    void readsNumbersAsCooksWriteThem(String text, String expected) {
        assertThat(Ratio.parse(text).toString()).isEqualTo(Ratio.parse(expected).toString());
        assertThat(Ratio.parse(text)).isEqualTo(Ratio.parse(expected));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "x",
                "NaN",
                "Infinity",
                "1e5",
                "1E999999",
                "0x10",
                "1/0",
                "1/",
                "/2",
                "1.",
                "1..2",
                "1/2/3",
                "--1",
                "1 2",
                "1.5/2",
                "1,234.5",
                "٣",
                "1_000"
            })
    void refusesWhatIsNoNumberInASentence(String text) {
        assertThatThrownBy(() -> Ratio.parse(text))
                .isInstanceOf(MeasureException.class)
                .message()
                .endsWith(".")
                .hasSizeBetween(20, 160);
    }

    @Test
    void writesShortDecimalsAndElseFractions() {
        assertThat(Ratio.of(3, 2)).hasToString("1.5");
        assertThat(Ratio.of(-1, 3)).hasToString("-1/3");
        assertThat(Ratio.of(7)).hasToString("7");
        assertThat(Ratio.parse("4.92892159375")).hasToString("4.92892159375");
        assertThat(Ratio.of(1, 1L << 40)).hasToString("1/1099511627776");
    }

    @Test
    void roundsOnceWhenAsked() {
        assertThat(Ratio.of(1, 3).toDecimal(4, RoundingMode.HALF_UP)).isEqualTo(new BigDecimal("0.3333"));
        assertThat(Ratio.of(5, 2).toWhole(RoundingMode.HALF_EVEN)).isEqualTo(2);
        assertThat(Ratio.of(-7, 2).floor()).isEqualTo(-4);
        assertThat(Ratio.of(-7, 2).ceil()).isEqualTo(-3);
        assertThat(Ratio.of(7, 2).ceil()).isEqualTo(4);
        assertThat(Ratio.of(4).ceil()).isEqualTo(4);
    }

    @Test
    void comparesBySize() {
        assertThat(Ratio.of(1, 3)).isLessThan(Ratio.of(34, 100));
        assertThat(Ratio.of(-1, 3)).isGreaterThan(Ratio.of(-1, 2));
        assertThat(Ratio.of(1, 3).max(Ratio.of(1, 2))).isEqualTo(Ratio.of(1, 2));
        assertThat(Ratio.of(1, 3).min(Ratio.of(1, 2))).isEqualTo(Ratio.of(1, 3));
        assertThat(Ratio.of(Long.MAX_VALUE, 3)).isLessThan(Ratio.of(Long.MAX_VALUE, 2));
        assertThat(Ratio.of(1, 4).doubleValue()).isEqualTo(0.25);
        assertThat(Ratio.of(Long.MAX_VALUE).times(Ratio.of(4)).doubleValue()).isEqualTo(0x1p65);
    }

    @Test
    void refusesWhatDoesNotFitALongInsteadOfWrapping() {
        Ratio large = Ratio.of(Long.MAX_VALUE).plus(Ratio.ONE);
        assertThatThrownBy(large::floor).isInstanceOf(MeasureException.class);
        assertThatThrownBy(large::ceil).isInstanceOf(MeasureException.class);
        assertThat(Ratio.of(Long.MIN_VALUE).ceil()).isEqualTo(Long.MIN_VALUE);
        assertThat(Ratio.of(Long.MIN_VALUE).floor()).isEqualTo(Long.MIN_VALUE);
        assertThat(Ratio.of(Long.MAX_VALUE).floor()).isEqualTo(Long.MAX_VALUE);
        assertThat(Ratio.of(Long.MIN_VALUE).negate()).isEqualTo(large);
        assertThat(Ratio.of(Long.MIN_VALUE, -1)).isEqualTo(large);
    }

    @Test
    void refusesDecimalsThatWouldTakeForeverToWriteOut() {
        assertThatThrownBy(() -> Ratio.of(new BigDecimal("1e999999999"))).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> Ratio.of(new BigDecimal("1e-999999999"))).isInstanceOf(MeasureException.class);
        assertThat(Ratio.of(new BigDecimal("1.5e3"))).isEqualTo(Ratio.of(1500));
    }

    /** The oracle is plain BigInteger arithmetic; half of the operands lie at the edge of a long. */
    @Test
    void agreesWithBigIntegersOnBothSidesOfTheEdgeOfALong() {
        Random random = new Random(20261124);
        for (int round = 0; round < 20_000; round++) {
            BigInteger[] t = {term(random), nonZero(random), nonZero(random), nonZero(random)};
            Ratio a = Ratio.of(t[0], t[1]);
            Ratio b = Ratio.of(t[2], t[3]);
            BigInteger across = t[0].multiply(t[3]);
            BigInteger counter = t[2].multiply(t[1]);
            BigInteger below = t[1].multiply(t[3]);
            assertThat(a.plus(b)).isEqualTo(Ratio.of(across.add(counter), below));
            assertThat(a.minus(b)).isEqualTo(Ratio.of(across.subtract(counter), below));
            assertThat(a.times(b)).isEqualTo(Ratio.of(t[0].multiply(t[2]), below));
            assertThat(a.dividedBy(b)).isEqualTo(Ratio.of(across, counter));
            assertThat(a.compareTo(b)).isEqualTo(across.compareTo(counter) * below.signum());
            assertThat(a.plus(b).minus(b)).isEqualTo(a).hasSameHashCodeAs(a);
            assertThat(a.numerator().gcd(a.denominator())).isEqualTo(BigInteger.ONE);
            assertThat(a.denominator().signum()).isPositive();
        }
    }

    private static BigInteger nonZero(Random random) {
        BigInteger term = term(random);
        return term.signum() == 0 ? BigInteger.ONE : term;
    }

    private static BigInteger term(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> BigInteger.valueOf(random.nextInt(41) - 20);
            case 1 -> BigInteger.valueOf(Long.MAX_VALUE - random.nextInt(3));
            case 2 -> BigInteger.valueOf(Long.MIN_VALUE + random.nextInt(3));
            default -> BigInteger.valueOf(random.nextLong());
        };
    }
}
