package etamine.costing.internal.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.costing.CostRules;
import etamine.costing.internal.larder.Larder;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.today.Call;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Everything a portion costs beside its lines: market values, both Q factors, packaging, drinks and work. */
class FullCostsTest {

    private static RecipeCost cost(Larder larder, String recipe) {
        return larder.costs().recipe(recipe).orElseThrow();
    }

    private static PlateCost plate(Larder larder, String recipe) {
        return cost(larder, recipe).plate().orElseThrow();
    }

    private static BigDecimal unit(RecipeCost cost, int output) {
        return cost.makes().get(output).unitCost().amount();
    }

    /** 30.00 less a credit of 2.00 shared by what 1 kg at 20.00 and 3 kg at 5.00 would cost to buy: 20 to 15. */
    @Test
    void sharesWhatRemainsByMarketValueWhenAllThatShareHaveOne() {
        Larder larder = new Larder()
                .bought("side", "30.00", "1 ea")
                .recipe("cut")
                .uses("1 ea", "side")
                .makes("1 kg", "loin")
                .marketValue("20.00", "1 kg")
                .makes("3 kg", "shoulder")
                .marketValue("5.00", "1 kg")
                .makes("1 kg", "bones", "2.00", "1 kg")
                .done();
        RecipeCost cost = cost(larder, "cut");
        assertThat(unit(cost, 0)).isEqualByComparingTo("16"); // 28 x 20/35
        assertThat(unit(cost, 1)).isEqualByComparingTo("4"); // 28 x 15/35 / 3
        assertThat(unit(cost, 2)).isEqualByComparingTo("2");
        assertThat(cost.makes().stream().map(RecipeCost.Made::byMarketValue)).containsExactly(true, true, false);
    }

    @Test
    void sharesByWeightWhenOneHasNoMarketValueOrAllAreWorthNothing() {
        Larder larder = new Larder()
                .bought("side", "28.00", "1 ea")
                .recipe("one")
                .uses("1 ea", "side")
                .makes("1 kg", "loin")
                .marketValue("20.00", "1 kg")
                .makes("3 kg", "shoulder")
                .done()
                .recipe("two")
                .uses("1 ea", "side")
                .makes("1 kg", "neck")
                .marketValue("0", "1 kg")
                .makes("3 kg", "belly")
                .marketValue("0", "1 kg")
                .done();
        for (String recipe : List.of("one", "two")) {
            assertThat(unit(cost(larder, recipe), 0)).isEqualByComparingTo("7");
            assertThat(unit(cost(larder, recipe), 1)).isEqualByComparingTo("7");
        }
    }

    /** 10.00 of food, 2 % for trifles, 0.35 on every plate and 0.15 of packaging; 24.00 with 20 % tax is 20.00. */
    @Test
    void addsBothQFactorsAndPackagingAndNamesThemApart() {
        Larder larder = new Larder()
                .bought("food", "10.00", "1 ea")
                .recipe("plate")
                .uses("1 ea", "food")
                .makes("1 portion", "plate")
                .sold("24.00", "20", "2")
                .allowing("0.35", "0.15")
                .target("50")
                .done();
        PlateCost plate = plate(larder, "plate");
        assertThat(plate.cost().amount()).isEqualByComparingTo("10.70");
        assertThat(plate.parts().qFactorShare().amount()).isEqualByComparingTo("0.20");
        assertThat(plate.parts().qFactorAmount().amount()).isEqualByComparingTo("0.35");
        assertThat(plate.parts().packaging().amount()).isEqualByComparingTo("0.15");
        assertThat(plate.foodCostPercent()).contains(new BigDecimal("53.50"));
        assertThat(plate.overTarget()).isTrue();
        Explanation story =
                larder.costs().explain("plate").orElseThrow().parts().get(0);
        assertThat(story.parts())
                .extracting(Explanation::title)
                .containsExactly("Food, line by line", "Q factor, 2 %", "Q factor, an amount", "Packaging and garnish");
    }

    @Test
    void takesTheKitchensTargetWhereTheRecipeHasNone() {
        Larder larder = new Larder()
                .bought("food", "10.00", "1 ea")
                .recipe("plate")
                .uses("1 ea", "food")
                .makes("1 portion", "plate")
                .sold("40.00", "0", "0")
                .done();
        assertThat(plate(larder, "plate").target()).isEmpty();
        larder.settings.change(CostRules.unset().withTarget(Optional.of(new BigDecimal("24.99"))));
        assertThat(plate(larder, "plate").overTarget()).isTrue();
    }

    /**
     * A 1.5 fl oz pour from a 750 ml bottle at 30.00 - computed from the US fluid ounce (NIST Handbook 44, Appendix C).
     * Spilling 5 % leaves less to sell, so the cost is divided by 0.95: 1.8678. Multiplying by 1.05 would give 1.8631.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            1,    1.7744, 17.74
            0.95, 1.8678, 18.68
            """)
    void countsWhatIsSpiltAsVolumeThatCannotBeSold(String poured, String pour, String percent) {
        Larder larder = new Larder()
                .bought("bottle", "30.00", "1 ea", "1 ea = 750 ml")
                .prepared("bottle", "poured", poured)
                .recipe("pour")
                .usesTrimmed("1.5 floz", "bottle", "poured")
                .makes("1 portion", "pour")
                .sold("10.00", "0", "0")
                .done();
        PlateCost plate = plate(larder, "pour");
        assertThat(plate.cost().amount()).isCloseTo(new BigDecimal(pour), within(new BigDecimal("5e-5")));
        assertThat(plate.foodCostPercent()).contains(new BigDecimal(percent));
        assertThat(plate.cost().rounded().toString()).isNotEqualTo("1.86");
    }

    /** A plate of 5.00 at 20.00 net with a glass of 2.00 at 8.00 and one of 3.50 at 10.00. */
    @Test
    void setsAPlateBesideEachOfItsDrinks() {
        Larder larder = new Larder()
                .bought("food", "5.00", "1 ea")
                .bought("house", "2.00", "1 ea")
                .bought("cellar", "3.50", "1 ea")
                .recipe("house-glass")
                .uses("1 ea", "house")
                .makes("1 portion", "house-glass")
                .sold("8.00", "0", "0")
                .done()
                .recipe("cellar-glass")
                .uses("1 ea", "cellar")
                .makes("1 portion", "cellar-glass")
                .sold("10.00", "0", "0")
                .done()
                .recipe("plate")
                .uses("1 ea", "food")
                .makes("1 portion", "plate")
                .sold("20.00", "0", "0")
                .pours("house-glass", "house")
                .pours("cellar-glass", "cellar")
                .pours("ghost", "")
                .done();
        RecipeCost cost = cost(larder, "plate");
        assertThat(cost.drinks()).extracting(RecipeCost.WithDrink::level).containsExactly("house", "cellar");
        RecipeCost.WithDrink house = cost.drinks().get(0);
        assertThat(house.poured().foodCostPercent()).contains(new BigDecimal("25.00"));
        assertThat(house.cost().amount()).isEqualByComparingTo("7");
        assertThat(house.net().amount()).isEqualByComparingTo("28");
        assertThat(house.costPercent()).contains(new BigDecimal("25.00"));
        assertThat(house.contribution().amount()).isEqualByComparingTo("21");
        assertThat(cost.drinks().get(1).contribution().amount()).isEqualByComparingTo("21.5");
        assertThat(cost.warnings()).extracting(Problem::code).containsExactly("unpriced-drink");
    }

    /** A litre of sauce takes 20 minutes at 18.00 an hour; the plate takes 80 ml of it and 2 minutes at 15.00. */
    @Test
    void carriesWorkThroughTheGraphWhenTheKitchenWantsIt() {
        Larder larder = new Larder()
                .bought("cream", "4.00", "1 l")
                .recipe("sauce")
                .uses("0.25 l", "cream")
                .makes("1 l", "sauce")
                .portion("80 ml")
                .at("sauce")
                .step("PT20M", "")
                .done()
                .recipe("plate")
                .uses("1 portion", "sauce")
                .makes("1 portion", "plate")
                .sold("10.00", "0", "0")
                .step("PT2M", "pass")
                .done();
        assertThat(plate(larder, "plate").labour()).isEmpty();
        CostRules.Labour rates =
                new CostRules.Labour(true, Optional.of(new BigDecimal("15.00")), Map.of("sauce", new BigDecimal("18")));
        larder.settings.change(CostRules.unset().withLabour(rates));
        assertThat(cost(larder, "sauce").labour().orElseThrow().batch().amount())
                .isEqualByComparingTo("6");
        PlateCost plate = plate(larder, "plate");
        assertThat(plate.labour().orElseThrow().amount()).isEqualByComparingTo("0.98"); // 6.00 x 0.08 + 0.50
        assertThat(plate.prime().orElseThrow().amount()).isEqualByComparingTo("1.06");
        assertThat(plate.contribution().amount()).as("work is no part of it").isEqualByComparingTo("9.92");
    }

    @Test
    void saysWhichStationHasNoRate() {
        Larder larder = new Larder()
                .bought("food", "1.00", "1 ea")
                .recipe("plate")
                .uses("1 ea", "food")
                .makes("1 portion", "plate")
                .step("PT2M", "pass")
                .done();
        larder.settings.change(CostRules.unset().withLabour(new CostRules.Labour(true, Optional.empty(), Map.of())));
        assertThat(cost(larder, "plate").warnings()).extracting(Problem::code).containsExactly("missing-rate");
    }

    /** Mass balance - computed: four litres boiled down to one cost four times as much a litre. */
    @Test
    void reducesWaterButNeverCost() {
        Larder larder = new Larder()
                .bought("stock", "2.00", "1 l")
                .recipe("glaze")
                .uses("4 l", "stock")
                .makes("1 l", "glaze")
                .done();
        assertThat(unit(cost(larder, "glaze"), 0)).isEqualByComparingTo("8");
    }

    @Test
    void costsTheSameInWhateverOrderLinesAndRecipesStand() {
        Larder one = new Larder().bought("a", "3.00", "1 kg").bought("b", "7.00", "1 kg");
        one.recipe("mix")
                .uses("300 g", "a")
                .uses("200 g", "b")
                .makes("500 g", "mix")
                .done();
        one.recipe("dish")
                .uses("100 g", "mix")
                .uses("50 g", "a")
                .makes("1 portion", "dish")
                .done();
        Larder two = new Larder().bought("b", "7.00", "1 kg").bought("a", "3.00", "1 kg");
        two.recipe("mix")
                .uses("200 g", "b")
                .uses("300 g", "a")
                .makes("500 g", "mix")
                .done();
        two.recipe("dish")
                .uses("50 g", "a")
                .uses("100 g", "mix")
                .makes("1 portion", "dish")
                .done();
        assertThat(cost(one, "dish").batch()).isEqualTo(cost(two, "dish").batch());
        assertThat(cost(one, "dish").batch().amount()).isEqualByComparingTo("0.61");
    }

    @Test
    void namesTheLineAndTheEquivalenceOfAPriceThatCannotBeUsed() {
        Larder larder = new Larder().unpriced("flour", "kg");
        larder.recipe("dough").uses("1 kg", "flour").makes("1 kg", "dough").done();
        var bySack = larder.source("offer", 10, Map.of("flour", UnitPrice.of("18.00", "1 sack")));
        RecipeCost cost = larder.costs(bySack).recipe("dough").orElseThrow();
        assertThat(cost.complete()).isFalse();
        assertThat(cost.warnings())
                .extracting(Problem::text)
                .anyMatch(text -> text.contains("line 1, flour") && text.contains("1 sack"));
    }

    @Test
    void takesNoCostOfNothingForALineWhosePreparationYieldsNothing() {
        Larder larder = new Larder().bought("root", "2.00", "1 kg").prepared("root", "peeled", "0");
        larder.recipe("puree")
                .usesTrimmed("100 g", "root", "peeled")
                .makes("100 g", "puree")
                .done();
        RecipeCost cost = cost(larder, "puree");
        assertThat(cost.complete()).isFalse();
        assertThat(cost.lines().get(0).cost()).isEmpty();
        assertThat(cost.warnings()).extracting(Problem::code).containsExactly("zero-yield");
    }

    @Test
    void saysOfEveryPriceSinceWhenItHoldsAndHowOldItIs() {
        Larder larder = new Larder().bought("cream", "4.00", "1 l");
        larder.recipe("sauce").uses("1 l", "cream").makes("1 l", "sauce").done();
        RecipeCost.Line line =
                larder.costs(dated()).recipe("sauce").orElseThrow().lines().get(0);
        assertThat(line.source()).isEqualTo("offer D-104 of Hill Dairy, since 2026-11-15, 9 days old");
        assertThat(line.origin().orElseThrow().daysOld()).contains(9L);
    }

    private static PriceSource dated() {
        return new PriceSource() {
            @Override
            public String id() {
                return "offer";
            }

            @Override
            public String label() {
                return "Current offer";
            }

            @Override
            public int rank() {
                return 10;
            }

            @Override
            public Optional<PriceQuote> quote(String item) {
                return Optional.of(new PriceQuote(
                        item,
                        UnitPrice.of("4.10", "1 l"),
                        id(),
                        "offer D-104 of Hill Dairy",
                        Optional.of(LocalDate.of(2026, 11, 15))));
            }
        };
    }

    @Test
    void callsForPlatesAboveTheirTargetSinglyOrTogether() {
        Larder larder = new Larder().bought("food", "5.00", "1 ea");
        for (int i = 0; i < 3; i++) {
            dish(larder, "dish" + i, (11 + i) + ".00");
        }
        larder.settings.change(CostRules.unset().withTarget(Optional.of(new BigDecimal("30"))));
        CostCalls calls = new CostCalls(larder.costs(), larder.itemList);
        assertThat(calls.calls(larder.clock().instant()))
                .extracting(Call::text)
                .containsExactly(
                        "dish0 costs more than its target: 45.45 % of its price, not 30 %",
                        "dish1 costs more than its target: 41.67 % of its price, not 30 %",
                        "dish2 costs more than its target: 38.46 % of its price, not 30 %");
        dish(larder, "dish3", "10.00");
        assertThat(calls.calls(larder.clock().instant()))
                .extracting(Call::text)
                .containsExactly("4 plates cost more than their target, first dish3: 50.00 % of its price, not 30 %");
        dish(larder, "dish4", "4.00");
        assertThat(calls.calls(larder.clock().instant()))
                .extracting(Call::text)
                .contains("dish4 is sold 1.00 below its cost");
    }

    private static void dish(Larder larder, String id, String price) {
        larder.recipe(id)
                .uses("1 ea", "food")
                .makes("1 portion", id)
                .sold(price, "0", "0")
                .done();
    }

    @Test
    void leavesARecipeOutOfTheMenuThatHasNoPortion() {
        Larder larder = new Larder().bought("food", "5.00", "1 kg");
        larder.recipe("stew")
                .uses("1 kg", "food")
                .makes("1 kg", "stew")
                .sold("9.00", "0", "0")
                .done();
        Recipe stew = larder.recipeList.find("stew").orElseThrow();
        assertThat(stew.menu()).isPresent();
        assertThat(cost(larder, "stew").plate()).isEmpty();
    }
}
