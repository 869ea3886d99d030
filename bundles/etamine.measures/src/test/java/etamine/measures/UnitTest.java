package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

    // UN/ECE, Recommendation 20, revision 11e (with Recommendation 21 packages): codes and names of the food-related
    // entries, typed from the list - published. G21 and G23 do not say whose cup or peck.
    private static final Map<String, String> REC_20 = Map.ofEntries(
            Map.entry("KGM", "kilogram"),
            Map.entry("GRM", "gram"),
            Map.entry("MGM", "milligram"),
            Map.entry("LBR", "pound"),
            Map.entry("ONZ", "ounce (avoirdupois)"),
            Map.entry("LTR", "litre"),
            Map.entry("MLT", "millilitre"),
            Map.entry("CLT", "centilitre"),
            Map.entry("DLT", "decilitre"),
            Map.entry("OZA", "fluid ounce (US)"),
            Map.entry("G24", "tablespoon (US)"),
            Map.entry("G25", "teaspoon (US)"),
            Map.entry("PTL", "liquid pint (US)"),
            Map.entry("QTL", "liquid quart (US)"),
            Map.entry("GLL", "gallon (US)"),
            Map.entry("OZI", "fluid ounce (UK)"),
            Map.entry("PTI", "pint (UK)"),
            Map.entry("QTI", "quart (UK)"),
            Map.entry("GLI", "gallon (UK)"),
            Map.entry("G21", "cup"),
            Map.entry("G23", "peck"),
            Map.entry("EA", "each"),
            Map.entry("H87", "piece"),
            Map.entry("C62", "one"),
            Map.entry("DZN", "dozen"),
            Map.entry("PTN", "portion"));

    // UCUM, ucum-essence.xml, version 2.2 (2024), definitions - published; metric values computed from them with
    // 1 in = 2.54 cm. NIST Handbook 44, Appendix C, has the same constants for gallon and cup - secondary.
    @ParameterizedTest
    @CsvSource(textBlock = """
            gal,      3785.411784 ml
            qt,       946.352946 ml
            pt,       473.176473 ml
            cup,      236.5882365 ml
            floz,     29.5735295625 ml
            tbsp,     14.78676478125 ml
            tsp,      4.92892159375 ml
            gal_imp,  4546.09 ml
            qt_imp,   1136.5225 ml
            pt_imp,   568.26125 ml
            floz_imp, 28.4130625 ml
            lb,       453.59237 g
            oz,       28.349523125 g
            kg,       1000 g
            mg,       0.001 g
            l,        1000 ml
            dl,       100 ml
            cl,       10 ml
            dozen,    12 ea
            """)
    void hasTheDefinedSize(String symbol, String metric) {
        Quantity expected = Quantity.parse(metric);
        assertThat(Quantity.of(1, unit(symbol)).in(expected.unit())).isEqualTo(expected);
    }

    // 5 and 15 ml: UCUM [tsp_m] and [tbs_m] - published. 250 ml: common practice in Australia, Canada and New Zealand;
    // UCUM's [cup_m] is the 240 ml cup of US labels and must not be taken for it.
    @ParameterizedTest
    @CsvSource(textBlock = """
            tsp_m,  5
            tbsp_m, 15
            cup_m,  250
            """)
    void hasRoundMetricKitchenMeasures(String symbol, long millilitres) {
        assertThat(Quantity.of(1, unit(symbol)).in(Unit.ML)).isEqualTo(Quantity.of(millilitres, Unit.ML));
    }

    // UN/ECE Rec 20, revision 11e - published.
    @ParameterizedTest
    @CsvSource(textBlock = """
            mg,       MGM, milligram
            g,        GRM, gram
            kg,       KGM, kilogram
            oz,       ONZ, ounce (avoirdupois)
            lb,       LBR, pound
            ml,       MLT, millilitre
            cl,       CLT, centilitre
            dl,       DLT, decilitre
            l,        LTR, litre
            tsp,      G25, teaspoon (US)
            tbsp,     G24, tablespoon (US)
            floz,     OZA, fluid ounce (US)
            cup,      MLT, millilitre
            pt,       PTL, liquid pint (US)
            qt,       QTL, liquid quart (US)
            gal,      GLL, gallon (US)
            tsp_m,    MLT, millilitre
            tbsp_m,   MLT, millilitre
            cup_m,    MLT, millilitre
            floz_imp, OZI, fluid ounce (UK)
            pt_imp,   PTI, pint (UK)
            qt_imp,   QTI, quart (UK)
            gal_imp,  GLI, gallon (UK)
            ea,       EA,  each
            dozen,    DZN, dozen
            portion,  PTN, portion
            """)
    void carriesItsTradeCode(String symbol, String code, String name) {
        assertThat(unit(symbol).rec20()).isEqualTo(code);
        assertThat(REC_20).containsEntry(code, name);
    }

    @Test
    void offersExactlyTheUnitsOfTheExchangeForm() {
        assertThat(Unit.all())
                .extracting(Unit::symbol)
                .containsExactlyInAnyOrder(
                        ("mg g kg oz lb ml cl dl l tsp tbsp floz cup pt qt gal tsp_m tbsp_m cup_m floz_imp pt_imp qt_imp"
                                        + " gal_imp ea dozen portion")
                                .split(" "));
    }

    @Test
    void readsEveryTradeCodeAsAUnitOfThatVerySize() {
        Unit.all()
                .forEach(unit -> assertThat(Quantity.of(3, unit).forTrade().unit())
                        .isEqualTo(Unit.byRec20(unit.rec20()).orElseThrow()));
        assertThat(Quantity.of(2, Unit.CUP).forTrade()).isEqualTo(Quantity.of("473.176473", Unit.ML));
        assertThat(Quantity.of(2, Unit.LB).forTrade()).isEqualTo(Quantity.of(2, Unit.LB));
        assertThat(Unit.byRec20("H87")).contains(Unit.EA);
        assertThat(Unit.byRec20("C62")).contains(Unit.EA);
    }

    // The first seven are not in revision 11e; G21 and G23 do not fix a size, and HEA counts animals - published.
    @ParameterizedTest
    @ValueSource(strings = {"CS", "BX", "PK", "PT", "QT", "HD", "PY", "G21", "G23", "HEA", "", "kgm"})
    void refusesCodesThatAreUnknownOrFixNoSize(String code) {
        assertThat(Unit.byRec20(code)).isEmpty();
    }

    @Test
    void takesOwnWordsInLowerCase() {
        assertThat(Unit.word(" Large  Bunch ")).isEqualTo(Unit.word("large bunch"));
        assertThat(Unit.word("gousse d’ail").symbol()).isEqualTo("gousse d’ail");
        assertThat(Unit.word("Bund").system()).isEqualTo(Unit.System.OWN);
        assertThat(Unit.word("bunch").isLike(Unit.word("bunch"))).isTrue();
        assertThat(Unit.word("bunch").isLike(Unit.word("clove"))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"kg", "Cups", "pieces", "t", "", "-", "2nd", "a=b", "sheet;", "x\u0000y"})
    void refusesWordsThatAreUnitsAlreadyOrNoWords(String word) {
        assertThatThrownBy(() -> Unit.word(word)).isInstanceOf(MeasureException.class);
    }

    @Test
    void namesTheBasicUnitOfEachDimension() {
        assertThat(Unit.basic(Dimension.MASS)).isEqualTo(Unit.G);
        assertThat(Unit.basic(Dimension.VOLUME)).isEqualTo(Unit.ML);
        assertThat(Unit.basic(Dimension.COUNT)).isEqualTo(Unit.EA);
        assertThat(Unit.basic(Dimension.PORTION)).isEqualTo(Unit.PORTION);
        assertThatThrownBy(() -> Unit.basic(Dimension.WORD)).isInstanceOf(MeasureException.class);
    }

    private static Unit unit(String symbol) {
        return Unit.find(symbol).orElseThrow();
    }
}
