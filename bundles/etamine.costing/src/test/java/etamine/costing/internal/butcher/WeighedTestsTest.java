package etamine.costing.internal.butcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import etamine.costing.ButcherSheet;
import etamine.costing.ButcherSheet.Part;
import etamine.costing.ButcherSheet.Portion;
import etamine.costing.ButcherSheet.Usable;
import etamine.costing.internal.larder.Larder;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeighedTestsTest {
    private final Larder larder = new Larder();

    private WeighedTests tests() {
        WeighedTests tests = new WeighedTests(larder.costs(), larder.itemList, larder);
        tests.recipes = larder.recipeList;
        return tests;
    }

    private ButcherSheet sheet(String recipe, String dealer) {
        Optional<UnitPrice> price = dealer.isEmpty() ? Optional.empty() : Optional.of(UnitPrice.of(dealer, "1 kg"));
        return tests().sheet(recipe, price, Optional.empty());
    }

    private void trimmed(String price, String purchased, String usable, String portion) {
        larder.bought("joint", price, "1 kg")
                .recipe("trimmed")
                .uses(purchased, "joint")
                .makes(usable, "trimmed")
                .portion(portion)
                .done();
    }

    private static Usable main(ButcherSheet sheet) {
        return sheet.usable().get(0).usable().orElseThrow();
    }

    private static Portion portion(ButcherSheet sheet) {
        return main(sheet).portion().orElseThrow();
    }

    private static String four(BigDecimal factor) {
        return factor.setScale(4, RoundingMode.HALF_UP).toPlainString();
    }

    /**
     * BCcampus, Basic Kitchen and Food Service Management, "Cooking Loss Test": leg of lamb, portion 125 g, cost factor per
     * portion 0.2931 - secondary; per kg 0.2931 / 0.125 = 2.3448 - computed. The weights here are chosen to give that.
     */
    @Test
    void givesTheFactorsOfTheCookingLossTest() {
        trimmed("9.00", "2.931 kg", "1.25 kg", "125 g");
        ButcherSheet sheet = sheet("trimmed", "10.00");
        assertThat(four(main(sheet).factor().orElseThrow())).isEqualTo("2.3448");
        assertThat(four(portion(sheet).factor().orElseThrow())).isEqualTo("0.2931");
        // portion cost = 0.2931 x wholesale price a kg
        assertThat(portion(sheet).cost().amount()).isEqualByComparingTo("2.6379");
        assertThat(portion(sheet).askedCost().orElseThrow().amount()).isEqualByComparingTo("2.931");
    }

    /**
     * G. Wall, Trade Calculations, striploin - inputs published: 5.2 kg at 11.95 give 4.6 kg; 85 portions of 170 g. Results
     * computed: 13.51 per usable kg, 14.45 kg usable, 16.33 kg to buy. With the yield cut to 88.5 % it would be 13.50.
     */
    @Test
    void costsTheStriploinThroughItsExactYield() {
        trimmed("11.95", "5.2 kg", "4.6 kg", "170 g");
        ButcherSheet sheet = sheet("trimmed", "");
        assertThat(main(sheet).perKg().rounded()).hasToString("13.51");
        assertThat(sheet.parts().get(0).percent()).isEqualTo("88.46");
        ButcherSheet.Need need = sheet.forPortions(sheet.parts().get(0), 85).orElseThrow();
        assertThat(need.usable()).isEqualTo(Quantity.parse("14.45 kg"));
        assertThat(need.purchased().amount().toDecimal(2, RoundingMode.HALF_UP)).isEqualTo("16.33");
        assertThat(portion(sheet).count()).isEqualTo(27);
        // a rounded yield moves the price by a cent
        assertThat(new BigDecimal("11.95").divide(new BigDecimal("0.885"), 2, RoundingMode.HALF_UP))
                .isEqualTo("13.50");
    }

    /**
     * Slides "Yield and Price Factor" (slideplayer 8991137) - secondary: 10 lb at 3.59 with 8 lb usable, 4.4875, printed
     * 4.49 per lb; price factor 5.00 / 4.30 = 1.163; factor 1.125 at 10.60 for 2.5 kg, 4.24, gives 4.77 per kg.
     */
    @Test
    void movesAUsableCostWithTheDealersPrice() {
        larder.bought("roots", "3.59", "1 lb")
                .recipe("peeled")
                .uses("10 lb", "roots")
                .makes("8 lb", "peeled")
                .done();
        UnitPrice perKg = new UnitPrice(main(sheet("peeled", "")).perKg().amount(), Quantity.parse("1 kg"));
        assertThat(perKg.cost(Quantity.parse("1 lb")).toDecimal(4, RoundingMode.HALF_UP))
                .isEqualTo("4.4875");

        larder.bought("fillet", "4.30", "1 kg")
                .recipe("cut")
                .uses("5 kg", "fillet")
                .makes("4.3 kg", "cut")
                .done();
        assertThat(main(sheet("cut", "")).factor().orElseThrow().setScale(3, RoundingMode.HALF_UP))
                .isEqualTo("1.163");
        assertThat(main(sheet("cut", "")).perKg()).hasToString("5.00");

        trimmed("4.00", "9 kg", "8 kg", "1 kg");
        ButcherSheet dearer = tests().sheet("trimmed", Optional.of(UnitPrice.of("10.60", "2.5 kg")), Optional.empty());
        assertThat(main(dearer).factor().orElseThrow()).isEqualByComparingTo("1.125");
        assertThat(dearer.asked().orElseThrow()).isEqualTo(UnitPrice.of("4.24", "1 kg"));
        assertThat(main(dearer).askedPerKg().orElseThrow()).hasToString("4.77");
    }

    /**
     * BCcampus, "Yield Testing" - as purchased published, factors secondary: tenderloin 2.5 kg, 100 / 70 = 1.42; salmon 7.75
     * kg, 100 / 64.51 = 1.55; tuna 100 / 53.33 = 1.875. The book truncates, so the exact factor is within 0.01 of it.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    2.5 kg,  1.75 kg,          1.42,  1.4285714286
                    7.75 kg, 4.999525 kg,      1.55,  1.5501472640
                    750 g,   399.975 g,        1.875, 1.8751171948
                    1 kg,    800 g,            1.25,  1.25
                    """)
    void comparesWithTheTruncatedYieldFactors(String bought, String usable, double printed, BigDecimal exact) {
        trimmed("10.00", bought, usable, "100 g");
        BigDecimal factor = main(sheet("trimmed", "")).factor().orElseThrow();
        assertThat(factor).isCloseTo(exact, within(new BigDecimal("0.00000001")));
        assertThat(factor.doubleValue()).isCloseTo(printed, within(0.01));
    }

    @Test
    void takesCreditsOffBeforeTheRestIsShared() {
        larder.bought("bird", "8.00", "1 kg")
                .recipe("taken-apart")
                .uses("2 kg", "bird")
                .makes("900 g", "breast")
                .makes("300 g", "leg")
                .makes("500 g", "carcass", "2.00", "1 kg")
                .done();
        ButcherSheet sheet = tests().sheet(
                        "taken-apart", Optional.of(UnitPrice.of("9.00", "1 kg")), Optional.of(Quantity.parse("150 g")));
        assertThat(sheet.cost()).hasToString("16.00");
        assertThat(sheet.loss()).isEqualTo(Quantity.parse("0.3 kg"));
        assertThat(sheet.usable()).extracting(Part::item).containsExactly("breast", "leg");
        // (16.00 - 1.00) over 1.2 kg is 12.50 a kg
        assertThat(sheet.usable()).allSatisfy(part -> {
            Usable usable = part.usable().orElseThrow();
            assertThat(usable.perKg().rounded()).hasToString("12.50");
            assertThat(four(usable.factor().orElseThrow())).isEqualTo("1.5625");
        });
        assertThat(portion(sheet).cost().rounded()).hasToString("1.88");
        assertThat(portion(sheet).count()).isEqualTo(6);
        assertThat(portion(sheet).askedCost().orElseThrow().rounded()).hasToString("2.11");
        Part carcass = sheet.parts().get(2);
        assertThat(carcass.value()).hasToString("1.00");
        assertThat(carcass.usable()).isEmpty();
        assertThat(sheet.notes()).anyMatch(note -> note.contains("credits move"));
    }

    @Test
    void saysWhatIsDoubtful() {
        larder.unpriced("mystery", "kg")
                .recipe("swollen")
                .uses("1 kg", "mystery")
                .makes("1.2 kg", "swollen")
                .done();
        ButcherSheet sheet = sheet("swollen", "10.00");
        assertThat(sheet.dealer()).isEmpty();
        assertThat(main(sheet).factor()).isEmpty();
        assertThat(sheet.loss().signum()).isNegative();
        assertThat(sheet.notes()).anyMatch(note -> note.startsWith("More comes out"));
        assertThat(sheet.notes()).anyMatch(note -> note.startsWith("No price is known"));
    }

    @Test
    void refusesWhatHasNoWeights() {
        larder.bought("egg", "0.30", "1 ea")
                .recipe("poached-egg")
                .uses("1 ea", "egg")
                .makes("1 portion", "poached-egg")
                .done();
        assertThatThrownBy(() -> sheet("poached-egg", "")).hasMessageContaining("weight");
        assertThatThrownBy(() -> sheet("poached-eg", "")).hasMessageContaining("Did you mean poached-egg?");
        trimmed("10.00", "1 kg", "800 g", "100 g");
        assertThatThrownBy(() -> tests().sheet("trimmed", Optional.empty(), Optional.of(Quantity.parse("1 l"))))
                .hasMessageContaining("such as 170 g");
        assertThatThrownBy(() -> tests().sheet("trimmed", Optional.of(UnitPrice.of("1.00", "1 ea")), Optional.empty()))
                .hasMessageContaining("give the price a kg");
        assertThat(tests().recipes()).containsExactly("trimmed");
    }
}
