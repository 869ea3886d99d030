package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitPriceTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
            1.20,  1 kg,    250 g,   0.3
            24.60, 6 x 1 l, 120 ml,  0.492
            3.00,  1 dozen, 4 ea,    1
            10.00, 3 l,     1 l,     10/3
            0.90,  1 bunch, 3 bunch, 2.7
            0.00,  1 kg,    1 lb,    0
            """)
    void costsExactly(String amount, String per, String quantity, String cost) {
        assertThat(UnitPrice.of(amount, per).cost(Quantity.parse(quantity))).isEqualTo(Ratio.parse(cost));
    }

    // At most four decimals for a price: OpenPeppol, Peppol BIS Ordering 3 - published. 1.20 a kg is 0.544310844 a lb:
    // computed, 1.20 x 0.45359237.
    @ParameterizedTest
    @CsvSource(textBlock = """
            1.20,  1 kg,    lb,  0.5443 / 1 lb
            1.20,  1 kg,    g,   0.0012 / 1 g
            24.60, 6 x 1 l, l,   4.10 / 1 l
            10.00, 3 l,     l,   3.3333 / 1 l
            20.00, 3 l,     l,   6.6667 / 1 l
            12.00, 1 dozen, ea,  1.00 / 1 ea
            0.005, 100 ea,  ea,  0.0001 / 1 ea
            120,   1 kg,    kg,  120.00 / 1 kg
            """)
    void restatesPricesWithFourDecimals(String amount, String per, String unit, String restated) {
        assertThat(UnitPrice.of(amount, per).in(Unit.find(unit).orElseThrow())).hasToString(restated);
    }

    @Test
    void pricesABaseUnit() {
        assertThat(UnitPrice.of("1.20", "1 kg").perBase()).isEqualTo(Ratio.parse("0.0000012"));
        assertThat(UnitPrice.of("3.00", "2 bunch").perBase()).isEqualTo(Ratio.parse("1.5"));
    }

    @Test
    void keepsWhatWasWrittenAndComparesWhatItMeans() {
        assertThat(UnitPrice.of("1.20", "1 kg")).hasToString("1.20 / 1 kg");
        assertThat(UnitPrice.of("1.2", "1 kg"))
                .isEqualTo(UnitPrice.of("1.20", "1 kg"))
                .hasSameHashCodeAs(UnitPrice.of("1.20", "1 kg"))
                .isNotEqualTo(UnitPrice.of("1.21", "1 kg"));
    }

    @Test
    void refusesWhatHasNoPrice() {
        UnitPrice price = UnitPrice.of("1.20", "1 kg");
        assertThatThrownBy(() -> price.cost(Quantity.parse("1 l"))).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> price.in(Unit.EA)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> UnitPrice.of("1.20", "0 kg")).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> UnitPrice.of("a lot", "1 kg")).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> new UnitPrice(new BigDecimal("1e999999999"), Quantity.parse("1 kg")))
                .isInstanceOf(MeasureException.class);
    }
}
