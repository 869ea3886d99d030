package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    static Stream<Arguments> pairsOfOneDimension() {
        return Unit.all().stream()
                .flatMap(from -> Unit.all().stream().filter(from::isLike).map(to -> Arguments.of(from, to)));
    }

    @ParameterizedTest
    @MethodSource("pairsOfOneDimension")
    void convertsThereAndBackToTheSameExactAmount(Unit from, Unit to) {
        for (String amount : List.of("1", "1/3", "0.7", "-22/7", "123456789.123456789")) {
            Quantity start = Quantity.of(amount, from);
            assertThat(start.in(to).in(from)).isEqualTo(start);
            assertThat(start.in(to)).isEqualByComparingTo(start);
        }
    }

    // 1 US gallon = 768 US teaspoons: computed from UCUM 2.2 (4 quarts of 2 pints of 16 fluid ounces of 6 teaspoons).
    @ParameterizedTest
    @CsvSource(textBlock = """
            1 gal,     tsp,  768 tsp
            1 gal,     floz, 128 floz
            1 cup,     tbsp, 16 tbsp
            1 lb,      oz,   16 oz
            1 gal_imp, floz_imp, 160 floz_imp
            1 pt_imp,  floz_imp, 20 floz_imp
            250 g,     kg,   0.25 kg
            3 tsp,     tbsp, 1 tbsp
            30 ea,     dozen, 2.5 dozen
            """)
    void convertsWithinADimensionExactly(String from, String unit, String expected) {
        assertThat(Quantity.parse(from).in(Unit.find(unit).orElseThrow())).hasToString(expected);
    }

    // Imperial pint / US pint = 1.200950 at six places: computed, 568.26125 / 473.176473 (UCUM 2.2).
    @Test
    void keepsImperialAndUsMeasuresApart() {
        Ratio pints = Quantity.of(1, Unit.PT_IMP).dividedBy(Quantity.of(1, Unit.PT));
        assertThat(pints.toDecimal(6, RoundingMode.HALF_UP)).isEqualTo(new BigDecimal("1.200950"));
        assertThat(Quantity.of(12, Unit.FLOZ_IMP).compareTo(Quantity.of(12, Unit.FLOZ)))
                .isNegative();
    }

    @Test
    void addsAndSubtractsInTheUnitOfTheFirst() {
        Quantity kilo = Quantity.parse("1 kg");
        assertThat(kilo.plus(Quantity.parse("250 g"))).hasToString("1.25 kg");
        assertThat(kilo.minus(Quantity.parse("1500 g"))).hasToString("-0.5 kg");
        assertThat(kilo.times(Ratio.of(1, 3))).hasToString("1/3 kg");
        assertThat(Quantity.zero(Unit.ML).isZero()).isTrue();
        assertThat(kilo.negate().signum()).isEqualTo(-1);
    }

    // Scaling by k and then by 1/k must give back the stored quantity: a property, no source needed.
    @Test
    void scalesThereAndBackWithoutLoss() {
        Quantity start = Quantity.parse("1/3 cup");
        for (int k = 1; k <= 97; k++) {
            Ratio factor = Ratio.of(k, 98 - k);
            assertThat(start.times(factor).times(Ratio.ONE.dividedBy(factor))).isEqualTo(start);
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            1.5 kg,    1500000
            1 lb,      453592
            1 oz,      28350
            2 ea,      2000
            1/3 ea,    333
            1 dozen,   12000
            0.25 portion, 250
            1 tsp,     4929
            0.0025 ml, 2
            0.0035 ml, 4
            -0.0025 ml, -2
            """)
    void countsBaseUnitsRoundedHalfToEven(String quantity, long base) {
        assertThat(Quantity.parse(quantity).toBase()).isEqualTo(base);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            MASS,    1250,  1.25 g
            VOLUME,  1,     0.001 ml
            COUNT,   500,   0.5 ea
            PORTION, -3000, -3 portion
            """)
    void readsBaseUnitsBack(Dimension dimension, long base, String expected) {
        Quantity quantity = Quantity.fromBase(dimension, base);
        assertThat(quantity).hasToString(expected);
        assertThat(quantity.toBase()).isEqualTo(base);
    }

    @Test
    void refusesToKeepWhatDoesNotFit() {
        assertThatThrownBy(() -> Quantity.parse("9223372036855 kg").toBase())
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("kg");
        assertThat(Quantity.parse("9223372036854.775807 kg").toBase()).isEqualTo(Long.MAX_VALUE);
        assertThatThrownBy(() -> Quantity.parse("2 bunch").toBase())
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("bunch");
        assertThatThrownBy(() -> Quantity.fromBase(Dimension.WORD, 1)).isInstanceOf(MeasureException.class);
    }

    @Test
    void refusesToMixDimensions() {
        Quantity mass = Quantity.parse("1 kg");
        Quantity volume = Quantity.parse("1 l");
        assertThatThrownBy(() -> mass.plus(volume)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> mass.in(Unit.CUP)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> mass.dividedBy(volume)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> mass.compareTo(volume)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> Quantity.parse("1 ea").plus(Quantity.parse("1 portion")))
                .isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> Quantity.parse("1 bunch").plus(Quantity.parse("1 clove")))
                .isInstanceOf(MeasureException.class);
        assertThat(Quantity.parse("1 bunch").plus(Quantity.parse("2 bunch"))).hasToString("3 bunch");
    }

    @Test
    void readsTheExchangeForm() {
        assertThat(Quantity.parse("1/2 cup")).isEqualTo(new Quantity(Ratio.of(1, 2), Unit.CUP));
        assertThat(Quantity.parse("-0.5 l")).isEqualTo(new Quantity(Ratio.of(-1, 2), Unit.L));
        assertThat(Quantity.parse("6 x 1 l")).isEqualTo(Quantity.of(6, Unit.L));
        assertThat(Quantity.parse("3 sheet")).isEqualTo(Quantity.of(3, Unit.word("sheet")));
        assertThat(Quantity.parse("2 fish bone")).hasToString("2 fish bone");
        assertThat(Quantity.parse("12 tbsp_m").unit()).isEqualTo(Unit.TBSP_M);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "kg", "1", "1 kg 2", "1 kg 2 kg", "1 kg 1 l", "2 bunch 1 bunch", "1 k/g", "1 kg -2 g"})
    void refusesWhatIsNoQuantity(String text) {
        assertThatThrownBy(() -> Quantity.parse(text)).isInstanceOf(MeasureException.class);
    }
}
