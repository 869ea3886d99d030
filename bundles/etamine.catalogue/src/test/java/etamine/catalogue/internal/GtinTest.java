package etamine.catalogue.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GtinTest {
    // Worked examples of the check digit: GS1 Hong Kong, GS1 India and GS1 Sweden, how to calculate a check digit -
    // published; the digits of GS1 UK's 501234567890 and the 14-digit form of the first - computed. The next three and
    // the location number stand in OpenPeppol's BIS Ordering 3 example files - published, digits computed.
    @ParameterizedTest
    @CsvSource(textBlock = """
                    629104150021,  3
                    890400021003,  7
                    730001100001,  7
                    501234567890,  0
                    0570406620409, 3
                    0872270057588, 7
                    0872270057758, 4
                    730001000000,  1
                    1629104150021, 0
                    """)
    void reckonsTheCheckDigitAsPublished(String digits, int expected) {
        assertThat(Gtin.checkDigit(digits)).isEqualTo(expected);
        assertThat(Gtin.sound(digits + expected)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"6291041500214", "16291041500213", "629104150021", "62910415002", "629104150021x", ""})
    void refusesWrongDigitsLengthsAndLetters(String number) {
        assertThat(Gtin.sound(number)).isFalse();
    }
}
