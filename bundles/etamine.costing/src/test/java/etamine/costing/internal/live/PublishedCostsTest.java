package etamine.costing.internal.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import etamine.costing.internal.larder.Larder;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.measures.Money;
import etamine.measures.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples from teaching texts; the source stands beside each. */
class PublishedCostsTest {

    /**
     * <i>Foodservice Systems</i>, supplement, appendix A, recipe costing - secondary. Exact lines 7.16875, 16.80,
     * 28.125 and 0.80625. The text rounds the milk to 0.27 a cup first and prints 52.91; unrounded it is 52.90, and this
     * program rounds once, at the end.
     */
    @Test
    void addsUnroundedLinesAndRoundsOnce() {
        RecipeCost cost = new Larder()
                .bought("spinach", "1.55", "1 lb")
                .bought("cheese", "5.60", "1 lb")
                .bought("eggs", "4.50", "1 dozen")
                .bought("milk", "4.30", "1 gal")
                .recipe("bake")
                .uses("4.625 lb", "spinach")
                .uses("3 lb", "cheese")
                .uses("75 ea", "eggs")
                .uses("3 cup", "milk")
                .makes("50 portion", "bake")
                .done()
                .costs()
                .recipe("bake")
                .orElseThrow();
        assertThat(cost.lines().stream()
                        .map(line -> line.cost().orElseThrow().amount().stripTrailingZeros()))
                .containsExactly(
                        new BigDecimal("7.16875"),
                        new BigDecimal("16.8"),
                        new BigDecimal("28.125"),
                        new BigDecimal("0.80625"));
        assertThat(rounded(cost.batch())).isEqualTo("52.90");
        // The other policy, each line rounded before it is added, costs a cent more; it is not this program's.
        assertThat(cost.lines().stream()
                        .map(line -> line.cost().orElseThrow().rounded().amount())
                        .reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo("52.91");
        assertThat(cost.portion().orElseThrow().amount()).isEqualByComparingTo("1.058");
    }

    /**
     * G. Wall, <i>Trade Calculations</i>, striploin - inputs published: 5.2 kg as purchased at 11.95 give 4.6 kg; results
     * computed: 13.51 per kg usable, 16.33 kg to buy for 85 portions of 170 g. Yield printed as 88.5 % would give 13.50.
     */
    @Test
    void costsWhatIsUsableThroughTheExactYield() {
        RecipeCost cost = new Larder()
                .bought("striploin", "11.95", "1 kg")
                .prepared("striploin", "trimmed", "46/52")
                .recipe("steaks")
                .usesTrimmed("14.45 kg", "striploin", "trimmed")
                .makes("85 portion", "steaks")
                .done()
                .costs()
                .recipe("steaks")
                .orElseThrow();
        RecipeCost.Line line = cost.lines().get(0);
        assertThat(line.asPurchased().orElseThrow().in(Unit.KG).amount().toDecimal(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo("16.33");
        BigDecimal perKilo =
                line.cost().orElseThrow().amount().divide(new BigDecimal("14.45"), 4, RoundingMode.HALF_UP);
        assertThat(perKilo.setScale(2, RoundingMode.HALF_UP)).isEqualByComparingTo("13.51");
    }

    /** A culinary-arithmetic exercise - secondary: 20 lb of trimmed cabbage at a yield of 79 % are 25.3 lb to buy. */
    @Test
    void buysMoreThanIsUsed() {
        RecipeCost cost = new Larder()
                .bought("cabbage", "1.00", "1 lb")
                .prepared("cabbage", "cored", "0.79")
                .recipe("slaw")
                .usesTrimmed("20 lb", "cabbage", "cored")
                .makes("1 portion", "slaw")
                .done()
                .costs()
                .recipe("slaw")
                .orElseThrow();
        assertThat(cost.lines()
                        .get(0)
                        .asPurchased()
                        .orElseThrow()
                        .in(Unit.LB)
                        .amount()
                        .toDecimal(1, RoundingMode.HALF_UP))
                .isEqualByComparingTo("25.3");
    }

    /**
     * Slides "Yield &amp; Price Factor" - secondary: 10 lb at 3.59 of which 8 lb are usable cost 4.4875 a pound, printed
     * 4.49, and 2.5 kg for 10.60 at a factor of 1.125 come to 4.77 a kilogram; <i>MTH 81</i>, ch. 11 - computed: 3 oz of pepper at 1.67 a pound with a yield of 71 % cost 0.441.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            3.59, 1 lb, 8/10,   1 lb, 4.4875
            1.67, 1 lb, 71/100, 3 oz, 0.4410
            4.24, 1 kg, 8/9,    1 kg, 4.7700
            """)
    void dividesByTheYield(String price, String per, String yield, String usable, String expected) {
        RecipeCost cost = new Larder()
                .bought("item", price, per)
                .prepared("item", "trimmed", yield)
                .recipe("dish")
                .usesTrimmed(usable, "item", "trimmed")
                .makes("1 portion", "dish")
                .done()
                .costs()
                .recipe("dish")
                .orElseThrow();
        assertThat(cost.batch().amount()).isCloseTo(new BigDecimal(expected), within(new BigDecimal("0.00005")));
    }

    /**
     * Pours - computed from the definitions of the US fluid ounce (NIST Handbook 44, Appendix C): a 1.5 fl oz pour from a
     * 750 ml bottle at 30.00 costs 1.7744; sold at 10.00 its pour cost is 17.74 %; with 5 % spilt it costs 1.8678.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            750 ml,   1.7744, 17.74
            712.5 ml, 1.8678, 18.68
            """)
    void costsAPourFromWhatTheBottleReallyGives(String usable, String pour, String percent) {
        RecipeCost cost = new Larder()
                .bought("bottle", "30.00", "1 ea")
                .recipe("house-pour")
                .uses("1 ea", "bottle")
                .makes(usable, "house-pour")
                .portion("1.5 floz")
                .sold("10.00", "0", "0")
                .done()
                .costs()
                .recipe("house-pour")
                .orElseThrow();
        assertThat(cost.portion().orElseThrow().amount())
                .isCloseTo(new BigDecimal(pour), within(new BigDecimal("5e-5")));
        assertThat(plate(cost).foodCostPercent()).contains(new BigDecimal(percent));
    }

    /** <i>MTH 81</i>, ch. 11 - secondary: what costs 1.15 and sells at 3.66 has a food cost of 31.42 %. */
    @Test
    void reckonsFoodCostOnTheNetPrice() {
        assertThat(plate(plateCosting("1.15", "3.66", "0", "0")).foodCostPercent())
                .contains(new BigDecimal("31.42"));
    }

    /**
     * Hospitality teaching page, July 2012 - secondary: 23.65 less 7.50 leaves 16.15, 16.45 less 5.20 leaves 11.25.
     */
    @ParameterizedTest
    @CsvSource({"7.50, 23.65, 16.15", "5.20, 16.45, 11.25"})
    void leavesTheContributionAfterCost(String cost, String price, String contribution) {
        assertThat(plate(plateCosting(cost, price, "0", "0")).contribution().amount())
                .isEqualByComparingTo(contribution);
    }

    /** Common practice: tax is taken out of the menu price before anything is reckoned; the Q factor is added to cost. */
    @Test
    void takesTaxOutOfThePriceAndAddsTheQFactorToTheCost() {
        PlateCost plate = plate(plateCosting("10.00", "24.00", "20", "5"));
        assertThat(plate.net().amount()).isEqualByComparingTo("20");
        assertThat(plate.cost().amount()).isEqualByComparingTo("10.5");
        assertThat(plate.foodCostPercent()).contains(new BigDecimal("52.50"));
        assertThat(plate.contribution().amount()).isEqualByComparingTo("9.5");
    }

    private static RecipeCost plateCosting(String cost, String price, String tax, String qFactor) {
        return new Larder()
                .bought("food", cost, "1 ea")
                .recipe("plate")
                .uses("1 ea", "food")
                .makes("1 portion", "plate")
                .sold(price, tax, qFactor)
                .done()
                .costs()
                .recipe("plate")
                .orElseThrow();
    }

    private static PlateCost plate(RecipeCost cost) {
        return cost.plate().orElseThrow();
    }

    private static String rounded(Money money) {
        return money.rounded().toString();
    }
}
