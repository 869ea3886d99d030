package etamine.ingredients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.ingredients.YieldTest.Kind;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.yield.Spread;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YieldTestTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 24);

    private static YieldTest test(Kind kind, String in, String out) {
        return new YieldTest(DAY, "Ana", kind, Quantity.parse(in), Quantity.parse(out), "", false);
    }

    private static Ingredient with(YieldTest... tests) {
        YieldRecord record = YieldRecord.NONE.withTests(List.of(tests));
        return Ingredient.named("breast", "Breast", Unit.KG)
                .withPreparations(List.of(new Preparation("roasted", Ratio.ONE, List.of())), Map.of("roasted", record));
    }

    /**
     * BCcampus, Basic Kitchen and Food Service Management, “Yield Testing”: carrots 1 kg to 800 g (published); the
     * other EP weights are computed from the published AP weights and percentages. The book truncates its factors, so
     * they agree to 0.01 only.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 kg    | 800 g       | 4/5             | 1.25
            2.5 kg  | 1.75 kg     | 7/10            | 1.42
            7.75 kg | 4.999525 kg | 6451/10000      | 1.55
            750 ml  | 399.975 ml  | 5333/10000      | 1.875
            """)
    void yieldIsWhatCameOutOverWhatWentIn(String in, String out, String yield, String factor) {
        Ratio measured = test(Kind.TRIM, in, out).yield();

        assertThat(measured).isEqualTo(Ratio.parse(yield));
        assertThat(Ratio.ONE
                        .dividedBy(measured)
                        .toDecimal(6, RoundingMode.HALF_UP)
                        .subtract(new BigDecimal(factor))
                        .abs())
                .isLessThanOrEqualTo(new BigDecimal("0.01"));
    }

    /**
     * G. Wall, Trade Calculations, striploin: 5.2 kg as purchased, 4.6 kg usable at 11.95 per kg, 85 portions of 170 g
     * (published); results computed. With the printed, rounded 88.5 % the cost would come out a cent lower.
     */
    @Test
    void theExactRatioOfTheStriploinGivesItsCostToTheCent() {
        Ratio yield = test(Kind.TRIM, "5.2 kg", "4.6 kg").yield();

        assertThat(yield).isEqualTo(Ratio.of(23, 26));
        assertThat(yield.toDecimal(6, RoundingMode.HALF_UP)).isEqualByComparingTo("0.884615");
        assertThat(Ratio.parse("11.95").dividedBy(yield).toDecimal(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo("13.51");
        assertThat(Ratio.parse("14.45").dividedBy(yield).toDecimal(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo("16.33");
        assertThat(Ratio.parse("11.95").dividedBy(Ratio.parse("0.885")).toDecimal(2, RoundingMode.HALF_UP))
                .as("the trap")
                .isEqualByComparingTo("13.50");
    }

    /**
     * Bone-in chicken breast: trim 0.80 (USDA SR28 (2015), row 05057, published), roasted 0.72 (USDA Table of Cooking
     * Yields, Release 2 (2014), secondary); 2.000 kg give 1.152 kg (computed): yields multiply, losses do not add.
     */
    @Test
    void theMeanOfBothKindsIsTheirProduct() {
        Ingredient breast = with(
                test(Kind.TRIM, "1 kg", "780 g"),
                test(Kind.TRIM, "1 kg", "820 g"),
                test(Kind.COOKING, "500 g", "360 g"));

        Ingredient accepted = breast.accepting("roasted", List.of(0, 1, 2), DAY, "Ben");

        Ratio yield = accepted.item().preparations().get(0).yield();
        assertThat(yield).isEqualTo(Ratio.parse("0.576"));
        assertThat(Quantity.parse("2 kg").times(yield)).isEqualTo(Quantity.parse("1.152 kg"));
        assertThat(yield).isNotEqualTo(Ratio.parse("0.52"));
        assertThat(accepted.yieldOf("roasted").note())
                .isEqualTo("Mean of 2 trim tests, 2026-11-24 to 2026-11-24, times cooking test of 2026-11-24 by Ana,"
                        + " 500 g to 360 g; accepted 2026-11-24 by Ben.");
    }

    @Test
    void givesMeanAndSpreadOfEachKind() {
        YieldRecord record = with(
                        test(Kind.TRIM, "1 kg", "740 g"),
                        test(Kind.TRIM, "2 kg", "1.52 kg"),
                        test(Kind.TRIM, "500 g", "375 g"))
                .yieldOf("roasted");

        Spread spread = record.spread(Kind.TRIM).orElseThrow();

        assertThat(spread.mean()).isEqualTo(Ratio.parse("0.75"));
        assertThat(spread.deviation()).contains(Ratio.parse("0.01"));
        assertThat(record.spread(Kind.COOKING)).isEmpty();
    }

    @Test
    void acceptingKeepsEveryTestAndTheHistory() {
        Ingredient breast = with(test(Kind.TRIM, "1 kg", "780 g"), test(Kind.TRIM, "1 kg", "820 g"));

        Ingredient later = breast.accepting("roasted", List.of(1), DAY, "Ana")
                .accepting("roasted", List.of(0, 1), DAY.plusDays(1), "");

        YieldRecord record = later.yieldOf("roasted");
        assertThat(record.tests()).extracting(YieldTest::accepted).containsExactly(true, true);
        assertThat(record.history())
                .extracting(change -> change.date() + " " + change.by() + " " + change.yield())
                .containsExactly("2026-11-24 Ana 0.82", "2026-11-25  0.8");
        assertThat(breast.accepting("roasted", List.of(1), DAY, "")
                        .yieldOf("roasted")
                        .tests())
                .extracting(YieldTest::accepted)
                .containsExactly(false, true);
    }

    @Test
    void refusesATestThatIsNotThere() {
        assertThatThrownBy(() -> with(test(Kind.TRIM, "1 kg", "780 g")).accepting("roasted", List.of(3), DAY, ""))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("it has 1");
        assertThatThrownBy(() -> with().accepting("roasted", List.of(), DAY, ""))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("Record a test");
    }
}
