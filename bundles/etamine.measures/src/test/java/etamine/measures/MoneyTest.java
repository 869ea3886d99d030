package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
    private static final Currency EUR = Currency.getInstance("EUR");

    // ISO 4217 minor units: JPY 0, EUR 2, KWD 3 (code list in the Peppol repository) - published. Half up, away from
    // zero, is the rule this program states.
    @ParameterizedTest
    @CsvSource(textBlock = """
            JPY, 1234.5,    1235
            JPY, 1234.49,   1234
            EUR, 2.345,     2.35
            EUR, 2.3449999, 2.34
            EUR, -2.345,    -2.35
            EUR, 7,         7.00
            KWD, 1.2345,    1.235
            KWD, 1.2,       1.200
            """)
    void roundsHalfUpToTheMinorUnit(String currency, String amount, String rounded) {
        Currency unit = Currency.getInstance(currency);
        assertThat(Money.of(amount, unit).rounded()).hasToString(rounded).isEqualTo(Money.of(rounded, unit));
    }

    // OpenPeppol, Peppol BIS Ordering 3, Order_Example.xml (NOK) - published: lines 6300.00 and 225.00, allowance
    // 652.50, charge 400.00, stated tax 100.00, prepaid 10.00, rounding 0.50, payable 6363.00.
    @Test
    void addsUpThePublishedOrderExample() {
        Currency nok = Currency.getInstance("NOK");
        Money lines = Money.of("120", nok)
                .times(Ratio.of(50))
                .plus(Money.of("600", nok))
                .minus(Money.of("300", nok))
                .plus(Money.of("15", nok).times(Ratio.of(15)));
        assertThat(lines).hasToString("6525.00");
        Money beforeTax = lines.minus(lines.times(Ratio.of(1, 10))).plus(Money.of("400", nok));
        assertThat(beforeTax).hasToString("6272.50");
        Money payable =
                beforeTax.plus(Money.of("100", nok)).minus(Money.of("10", nok)).plus(Money.of("0.5", nok));
        assertThat(payable).hasToString("6363.00").isEqualTo(Money.of("6363", nok));
    }

    @Test
    void roundsOnceAtTheEnd() {
        Money third = Money.of("0.10", EUR).times(Ratio.of(1, 3));
        assertThat(third).hasToString("0.0333333333");
        assertThat(third.times(Ratio.of(3)).rounded()).hasToString("0.10");
        assertThat(Money.of("0.005", EUR).plus(Money.of("0.005", EUR)).rounded())
                .hasToString("0.01");
    }

    @Test
    void treatsEqualAmountsAsEqual() {
        assertThat(Money.of("1.2", EUR)).isEqualTo(Money.of("1.200", EUR)).hasToString("1.20");
        assertThat(Money.of(new BigDecimal("1E2"), EUR)).hasToString("100.00");
        assertThat(Money.zero(EUR).isZero()).isTrue();
        assertThat(Money.of("-1", EUR)).isLessThan(Money.zero(EUR));
        assertThat(Money.of("-1", EUR).signum()).isEqualTo(-1);
        assertThat(Money.of("1.25", EUR).toRatio()).isEqualTo(Ratio.of(5, 4));
        assertThat(Money.of(Ratio.of(5, 4), EUR)).isEqualTo(Money.of("1.25", EUR));
    }

    @Test
    void refusesToMixCurrencies() {
        Money yen = Money.of("100", Currency.getInstance("JPY"));
        assertThatThrownBy(() -> yen.plus(Money.of("1", EUR)))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("JPY")
                .hasMessageContaining("EUR");
        assertThatThrownBy(() -> yen.compareTo(Money.of("1", EUR))).isInstanceOf(MeasureException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "abc", "1e9", "1E999999999", "€5", "1,50", "1.", ".5", "1 000", "NaN", "--1", "1/2", "１"})
    void refusesWhatIsNoAmount(String text) {
        assertThatThrownBy(() -> Money.parse(text, EUR))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("12.50");
    }

    @Test
    void refusesNumbersTooLongToPay() {
        assertThatThrownBy(() -> Money.parse("9".repeat(1_000_000), EUR)).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> Money.of(new BigDecimal("1e999999999"), EUR)).isInstanceOf(MeasureException.class);
    }
}
