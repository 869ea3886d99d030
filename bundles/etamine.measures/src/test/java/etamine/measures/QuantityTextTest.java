package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 1/2 cup          | 1.5 cup
            2 lb 4 oz          | 2.25 lb
            2 lb, 4 oz         | 2.25 lb
            2 lb,4 oz          | 2.25 lb
            2lb.4oz            | 2.25 lb
            2 pounds 4 ounces  | 2.25 lb
            1 cup and 2 tbsp   | 1.125 cup
            1 gal + 1 qt 1 pt  | 1.375 gal
            6 x 1 l            | 6 l
            6x1l               | 6 l
            ½ tsp              | 0.5 tsp
            1½ tsp             | 1.5 tsp
            1,5 kg             | 1.5 kg
            0,250 kg           | 0.25 kg
            250g               | 250 g
            250 G              | 250 g
            1.5L               | 1.5 l
            2 cups             | 2 cup
            3 tbsps            | 3 tbsp
            3 Tablespoons      | 3 tbsp
            1 teaspoon         | 1 tsp
            2 litres           | 2 l
            2 liters           | 2 l
            500 millilitres    | 500 ml
            70 grams           | 70 g
            3 kilos            | 3 kg
            1 lb.              | 1 lb
            2 fl. oz.          | 2 floz
            2 fluid ounces     | 2 floz
            1 imperial pint    | 1 pt_imp
            1 metric cup       | 1 cup_m
            4 each             | 4 ea
            12 pieces          | 12 ea
            12 pcs             | 12 ea
            2 dozen            | 2 dozen
            8 portions         | 8 portion
            3 bunch            | 3 bunch
            .5 l               | 0.5 l
            0 g                | 0 g
            """)
    void readsWhatPeopleType(String text, String expected) {
        assertThat(QuantityText.parse(text)).hasToString(expected);
    }

    @Test
    void knowsThePluralOfAnIngredientsOwnWords() {
        List<Unit> own = List.of(Unit.word("bunch"), Unit.word("clove"), Unit.word("leaf"), Unit.word("berry"));
        assertThat(QuantityText.parse("2 bunches", own)).hasToString("2 bunch");
        assertThat(QuantityText.parse("2 Cloves", own)).hasToString("2 clove");
        assertThat(QuantityText.parse("4 leaves", own)).hasToString("4 leaf");
        assertThat(QuantityText.parse("9 berries", own)).hasToString("9 berry");
        assertThat(QuantityText.parse("1 clove", own)).hasToString("1 clove");
        assertThat(QuantityText.parse("2 sheets", own)).hasToString("2 sheets");
        assertThat(QuantityText.parse("2 knives", List.of(Unit.word("knife")))).hasToString("2 knife");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            kg            | Begin with a number
            NaN g         | Begin with a number
            5             | Add a unit
            6 x           | after the x
            6 x l         | after the x
            6 × bunch     | after the x
            1/0 g         | divided by zero
            1/ g          | below the line
            -1 kg         | less than zero
            1e999999 g    | not a unit
            1,500 g       | two ways
            1,234.5 g     | two ways
            1.234.567 g   | two ways
            1.5/2 g       | not both
            1. kg         | a digit after
            4 oz 2 lb     | larger unit first
            2 kg 3 ml     | larger unit first
            2 T           | not a unit
            5 kg (about)  | not a unit
            """)
    void saysWhatToDoInstead(String text, String part) {
        assertThatThrownBy(() -> QuantityText.parse(text))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining(part)
                .message()
                .endsWith(".");
    }

    @Test
    void asksForAnAmountWhenThereIsNone() {
        assertThatThrownBy(() -> QuantityText.parse(" \t\u00a0")).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> QuantityText.parse(""))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("Write an amount");
    }

    static Stream<String> hostileTexts() {
        return Stream.of(
                "9".repeat(5_000_000) + " g",
                "1/" + "9".repeat(5_000_000) + " g",
                "0." + "0".repeat(5_000_000) + "1 g",
                "1 " + "a ".repeat(2_000_000),
                "2 x ".repeat(1_000_000) + "1 g",
                "1 g ".repeat(1_000_000),
                " ".repeat(5_000_000),
                "½".repeat(100),
                "9".repeat(119) + "x",
                "1 g\u0000\u0007\uffff",
                "1 \ud83c\udf70\ud83c",
                "Infinity l",
                "1e-999999999 l");
    }

    @ParameterizedTest
    @MethodSource("hostileTexts")
    void refusesHostileTextAtOnceInOneShortSentence(String text) {
        assertTimeoutPreemptively(Duration.ofSeconds(2), () -> {
            assertThatThrownBy(() -> QuantityText.parse(text))
                    .isInstanceOf(MeasureException.class)
                    .message()
                    .hasSizeLessThan(200);
            assertThatThrownBy(() -> Quantity.parse(text)).isInstanceOf(MeasureException.class);
            assertThatThrownBy(() -> Pack.parse(text)).isInstanceOf(MeasureException.class);
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 g        | 12 g
            12.5 g      | 12.5 g
            45.7 g      | 46 g
            0.3 g       | 0.3 g
            3 mg        | 0.003 g
            1250 g      | 1.25 kg
            999.7 g     | 1 kg
            1 lb        | 454 g
            5 lb        | 2.27 kg
            125.4 kg    | 125 kg
            350 ml      | 350 ml
            1500 ml     | 1.5 l
            2 dl        | 200 ml
            1 tsp       | 5 ml
            1 tbsp      | 15 ml
            1 cup       | 237 ml
            1 gal       | 3.8 l
            3.75 l      | 3.75 l
            1/3 ea      | 1/3 ea
            2.5 ea      | 2 1/2 ea
            2.37 ea     | 2.37 ea
            7/9 portion | 0.78 portion
            2 dozen     | 2 dozen
            3 bunch     | 3 bunch
            0 kg        | 0 kg
            -1.5 l      | -1.5 l
            """)
    void showsMetricAmounts(String quantity, String shown) {
        assertThat(QuantityText.format(Quantity.parse(quantity), MeasureStyle.METRIC))
                .isEqualTo(shown);
    }

    // 20 oz shown as pounds and ounces is 1 lb 4 oz: computed, 16 oz to the pound.
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            20 oz       | 1 lb 4 oz
            2.25 lb     | 2 lb 4 oz
            1 lb        | 1 lb
            15.95 oz    | 1 lb
            1/2 oz      | 1/2 oz
            3 g         | 3 g
            50 g        | 1 3/4 oz
            250 g       | 8 3/4 oz
            1 kg        | 2 lb 3 1/2 oz
            20 kg       | 44 lb
            1.5 cup     | 1 1/2 cup
            3/4 tsp     | 3/4 tsp
            1/8 tsp     | 1/8 tsp
            0.2 ml      | 0.2 ml
            1.5 tbsp    | 1 1/2 tbsp
            4 tsp       | 1 tbsp 1 tsp
            4 tbsp      | 1/4 cup
            5 tbsp      | 1/4 cup 1 tbsp
            2/3 cup     | 2/3 cup
            3.98 cup    | 1 qt
            5 cup       | 1 qt 1 cup
            6 cup       | 1 1/2 qt
            15.99 cup   | 1 gal
            1.5 floz    | 1 1/2 floz
            6 l         | 1 gal 2 1/4 qt
            1 pt        | 2 cup
            12 ea       | 12 ea
            -20 oz      | -1 lb 4 oz
            """)
    void showsUsAmounts(String quantity, String shown) {
        assertThat(QuantityText.format(Quantity.parse(quantity), MeasureStyle.US))
                .isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.5 cup     | 1 1/2 cup
            4/3 cup     | 1 1/3 cup
            -4/3 cup    | -1 1/3 cup
            1.5 kg      | 1.5 kg
            1/7 lb      | 1/7 lb
            453.59237 g | 453.59237 g
            2.5 ea      | 2 1/2 ea
            1/3 g       | 1/3 g
            """)
    void writesExactAmounts(String quantity, String shown) {
        assertThat(QuantityText.formatExact(Quantity.parse(quantity))).isEqualTo(shown);
    }
}
