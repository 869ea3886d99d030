package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConverterTest {

    @Test
    void needsNoEquivalenceWithinADimension() {
        Conversion conversion = Converter.of().convert(Quantity.parse("2 lb"), Unit.OZ);
        assertThat(conversion).isEqualTo(new Conversion.Converted(Quantity.parse("32 oz"), List.of()));
    }

    @Test
    void refusesVolumeToMassWithoutADensity() {
        Conversion conversion = Converter.of(List.of()).convert(Quantity.parse("2 cup"), Dimension.MASS);
        assertThat(conversion)
                .isEqualTo(
                        new Conversion.Missing(Unit.CUP, Unit.G, "Add what 1 cup weighs, for example 1 cup = 150 g."));
        assertThatThrownBy(conversion::orThrow)
                .isInstanceOf(MeasureException.class)
                .hasMessage("Add what 1 cup weighs, for example 1 cup = 150 g.");
    }

    // USDA, National Nutrient Database for Standard Reference, Release 28 (2015), file WEIGHT, NDB 12061, grams per US
    // cup - published; g/ml computed, grams / 236.5882365, half of the last digit.
    @ParameterizedTest
    @CsvSource(textBlock = """
            whole,  143, 0.6044
            sliced, 92,  0.3889
            ground, 95,  0.4015
            """)
    void takesTheDensityOfThePreparation(String preparation, String grams, BigDecimal perMillilitre) {
        List<Equivalence> item = List.of(equal("1 cup", "143 g"), equal("1 ea", "1.2 g"));
        Converter almonds = Converter.of(List.of(equal("1 cup", grams + " g")), item);
        Quantity weight =
                almonds.convert(Quantity.parse("2 cup"), Dimension.MASS).orThrow();
        assertThat(weight)
                .as(preparation)
                .isEqualTo(Quantity.parse(grams + " g").times(Ratio.of(2)));
        Ratio density =
                almonds.convert(Quantity.parse("1 ml"), Unit.G).orThrow().amount();
        assertThat(density.toDecimal(4, RoundingMode.HALF_UP)).isEqualTo(perMillilitre);
    }

    @Test
    void replacesTheItemsPairEvenWhenWrittenInOtherUnits() {
        Converter converter = Converter.of(List.of(equal("1 l", "400 g")), List.of(equal("1 cup", "143 g")));
        assertThat(converter.convert(Quantity.parse("500 ml"), Unit.G).orThrow())
                .hasToString("200 g");
    }

    @Test
    void goesThroughSeveralEquivalencesAndSaysWhich() {
        Equivalence piece = equal("1 ea", "750 g");
        Equivalence diced = equal("1 cup", "150 g");
        Converter celeriac = Converter.of(List.of(diced), List.of(piece));
        assertThat(celeriac.convert(Quantity.parse("2 ea"), Unit.CUP))
                .isEqualTo(new Conversion.Converted(Quantity.parse("10 cup"), List.of(piece, diced)));
        assertThat(celeriac.convert(Quantity.parse("10 cup"), Unit.DOZEN).orThrow())
                .hasToString("1/6 dozen");
    }

    @Test
    void takesTheShortestWay() {
        Equivalence direct = equal("1 bunch", "80 g");
        Converter converter = Converter.of(List.of(equal("1 bunch", "10 ea"), equal("1 ea", "9 g")), List.of(direct));
        assertThat(converter.convert(Quantity.parse("1 bunch"), Unit.G))
                .isEqualTo(new Conversion.Converted(Quantity.parse("80 g"), List.of(direct)));
    }

    @Test
    void prefersThePreparationsWayAmongEquallyLongOnes() {
        Converter converter = Converter.of(
                List.of(equal("1 bunch", "10 ea"), equal("1 ea", "9 g")),
                List.of(equal("1 bunch", "100 ml"), equal("1 ml", "0.7 g")));
        assertThat(converter.convert(Quantity.parse("1 bunch"), Unit.G).orThrow())
                .hasToString("90 g");
    }

    @Test
    void takesTheFirstListedOfTwoForOnePair() {
        Converter converter = Converter.of(List.of(equal("1 ea", "62 g"), equal("1 ea", "50 g")));
        assertThat(converter.convert(Quantity.parse("1 ea"), Unit.G).orThrow()).hasToString("62 g");
    }

    @Test
    void convertsOwnWordsBothWays() {
        Converter garlic = Converter.of(List.of(equal("1 bulb", "12 clove"), equal("1 clove", "5 g")));
        assertThat(garlic.convert(Quantity.parse("2 bulb"), Dimension.MASS).orThrow())
                .hasToString("120 g");
        assertThat(garlic.convert(Quantity.parse("30 g"), Unit.word("bulb")).orThrow())
                .hasToString("0.5 bulb");
        assertThat(garlic.convert(Quantity.parse("3 clove"), Unit.word("clove")).orThrow())
                .hasToString("3 clove");
    }

    @Test
    void convertsThereAndBackExactly() {
        Converter converter = Converter.of(List.of(equal("3 portion", "1 l"), equal("7 cup", "1.1 kg")));
        Quantity start = Quantity.parse("1/3 portion");
        Quantity weight = converter.convert(start, Unit.LB).orThrow();
        assertThat(converter.convert(weight, Unit.PORTION).orThrow()).isEqualTo(start);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 cup    | kg      | Add what 1 cup weighs, for example 1 cup = 150 g.
            1 kg     | cup     | Add what 1 cup weighs, for example 1 cup = 150 g.
            1 l      | g       | Add what 1 l weighs, for example 1 l = 1000 g.
            1 ea     | g       | Add what 1 ea weighs, for example 1 ea = 60 g.
            1 g      | portion | Add what 1 portion weighs, for example 1 portion = 60 g.
            1 bunch  | g       | Add what 1 bunch weighs, for example 1 bunch = 60 g.
            1 pinch  | g       | Add what 1 pinch weighs, for example 1 pinch = 0.4 g.
            1 crock  | g       | Add what 1 crock weighs, for example 1 crock = 20 g.
            1 portion | ea     | Add how many ea make 1 portion, for example 1 portion = 6 ea, or what 1 of each weighs.
            """)
    void namesTheMissingEquivalence(String quantity, String to, String sentence) {
        Conversion conversion =
                Converter.of().convert(Quantity.parse(quantity), Unit.find(to).orElseThrow());
        assertThat(conversion)
                .isInstanceOfSatisfying(
                        Conversion.Missing.class,
                        missing -> assertThat(missing.text()).isEqualTo(sentence));
    }

    @Test
    void asksOnlyForTheEndThatIsLoose() {
        Converter weighed = Converter.of(List.of(equal("1 ea", "62 g")));
        Conversion toCups = weighed.convert(Quantity.parse("2 ea"), Unit.CUP);
        assertThat(((Conversion.Missing) toCups).text()).startsWith("Add what 1 cup weighs");
        Conversion fromBunch = weighed.convert(Quantity.parse("2 bunch"), Unit.EA);
        assertThat(((Conversion.Missing) fromBunch).text()).startsWith("Add what 1 bunch weighs");
        Conversion loose = Converter.of().convert(Quantity.parse("2 bunch"), Unit.CUP);
        assertThat(((Conversion.Missing) loose).text()).contains("1 bunch").contains("1 cup");
    }

    @Test
    void ignoresWhatLinksADimensionWithItself() {
        Converter converter = Converter.of(List.of(equal("1 kg", "900 g")));
        assertThat(converter.convert(Quantity.parse("1 kg"), Unit.G).orThrow()).hasToString("1000 g");
    }

    @Test
    void refusesEquivalencesOfNothing() {
        assertThatThrownBy(() -> equal("0 cup", "150 g")).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> equal("1 cup", "-150 g")).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> Converter.of().convert(Quantity.parse("1 g"), Dimension.WORD))
                .isInstanceOf(MeasureException.class);
    }

    private static Equivalence equal(String of, String is) {
        return new Equivalence(Quantity.parse(of), Quantity.parse(is));
    }
}
