package etamine.costing.internal.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.costing.internal.larder.Larder;
import etamine.kitchen.cost.RecipeCost;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LiveCostsTest {

    /** A bird at 11.00 into breast, leg, and carcass and fat credited: 10.58 shared over 780 g by weight. */
    private static Larder bird() {
        return new Larder()
                .bought("fowl", "11.00", "1 ea")
                .recipe("breakdown")
                .uses("1 ea", "fowl")
                .makes("380 g", "breast")
                .makes("400 g", "leg")
                .makes("420 g", "carcass", "1.00", "1 kg")
                .makes("60 g", "fat", "0.00", "1 kg")
                .done();
    }

    @Test
    void splitsABreakdownIntoCreditsAndSharesByWeight() {
        RecipeCost cost = bird().costs().recipe("breakdown").orElseThrow();
        assertThat(cost.makes().stream().map(RecipeCost.Made::credited)).containsExactly(false, false, true, true);
        BigDecimal shared = new BigDecimal("13.5641"); // 10.58 / 0.780 kg
        assertThat(cost.makes().get(0).unitCost().amount()).isCloseTo(shared, within(new BigDecimal("0.0001")));
        assertThat(cost.makes().get(1).unitCost().amount()).isCloseTo(shared, within(new BigDecimal("0.0001")));
        assertThat(cost.makes().get(2).unitCost()).isEqualTo(UnitPrice.of("1.00", "1 kg"));
        assertThat(cost.makes().get(3).unitCost()).isEqualTo(UnitPrice.of("0", "1 kg"));
    }

    @Test
    void carriesTheValueOfACarcassThroughStockAndReductionToThePlate() {
        RecipeCost plate = bird().recipe("stock")
                .uses("0.42 kg", "carcass")
                .makes("1 l", "stock")
                .done()
                .recipe("jus")
                .uses("1 l", "stock")
                .makes("200 ml", "jus")
                .portion("40 ml")
                .done()
                .recipe("plate")
                .uses("1 portion", "jus")
                .makes("1 portion", "plate")
                .done()
                .costs()
                .recipe("plate")
                .orElseThrow();
        // Reducing takes water away, never cost: 0.42 for 200 ml, so 40 ml carry a fifth of it.
        assertThat(plate.batch().amount()).isEqualByComparingTo("0.084");
    }

    @Test
    void saysThatAFigureIsALowerBoundWhenAPriceIsMissing() {
        LiveCosts costs = new Larder()
                .unpriced("truffle", "g")
                .bought("butter", "8.00", "1 kg")
                .recipe("truffle-butter")
                .uses("10 g", "truffle")
                .uses("200 g", "butter")
                .makes("210 g", "truffle-butter")
                .done()
                .recipe("plate")
                .uses("20 g", "truffle-butter")
                .makes("1 portion", "plate")
                .done()
                .costs();
        assertThat(costs.recipe("plate").orElseThrow().missing()).containsExactly("truffle");
        assertThat(costs.item("truffle-butter").orElseThrow().complete()).isFalse();
        assertThat(costs.item("truffle")).isEmpty();
        assertThat(costs.recipe("truffle-butter").orElseThrow().batch().amount())
                .isEqualByComparingTo("1.6");
    }

    @Test
    void namesTheEquivalenceThatKeepsALineFromBeingCosted() {
        RecipeCost cost = new Larder()
                .bought("flour", "1.20", "1 kg")
                .recipe("dough")
                .uses("2 cup", "flour")
                .makes("300 g", "dough")
                .done()
                .costs()
                .recipe("dough")
                .orElseThrow();
        assertThat(cost.warnings()).extracting(Problem::code).contains("missing-equivalence");
        assertThat(cost.warnings()).extracting(Problem::text).anyMatch(text -> text.contains("1 cup"));
    }

    @Test
    void flagsCreditsAboveTheCostOfTheBatchButAllowsThem() {
        RecipeCost cost = new Larder()
                .bought("side", "5.00", "1 kg")
                .recipe("cut")
                .uses("1 kg", "side")
                .makes("500 g", "trim", "20.00", "1 kg")
                .makes("500 g", "rest")
                .done()
                .costs()
                .recipe("cut")
                .orElseThrow();
        assertThat(cost.makes().get(1).unitCost().amount()).isEqualByComparingTo("-10");
        assertThat(cost.warnings()).extracting(Problem::code).containsExactly("credits-above-cost");
    }

    @Test
    void takesThePriceOfTheFirstSourceThatCanBeConverted() {
        Larder larder = new Larder().bought("cream", "4.00", "1 l");
        larder.recipe("sauce").uses("100 ml", "cream").makes("100 ml", "sauce").done();
        var offer = larder.source("offer", 10, Map.of("cream", UnitPrice.of("5.00", "1 l")));
        var bySack = larder.source("sack", 5, Map.of("cream", UnitPrice.of("1.00", "1 sack")));
        RecipeCost cost = larder.costs(offer, bySack).recipe("sauce").orElseThrow();
        assertThat(cost.batch().amount()).isEqualByComparingTo("0.5");
        assertThat(cost.lines().get(0).source()).isEqualTo("offer price");
    }

    @Test
    void followsThePriceWhenItChanges() {
        Larder larder = new Larder().bought("cream", "4.00", "1 l");
        larder.recipe("sauce").uses("1 l", "cream").makes("1 l", "sauce").done();
        LiveCosts costs = larder.costs();
        assertThat(costs.recipe("sauce").orElseThrow().batch().amount()).isEqualByComparingTo("4");
        larder.bought("cream", "4.56", "1 l");
        assertThat(costs.recipe("sauce").orElseThrow().batch().amount()).isEqualByComparingTo("4.56");
    }

    @Test
    void followsAMeasureWhenItChangesThoughTheRecipeDoesNot() {
        Larder larder = new Larder().bought("flour", "1.00", "1 kg", "1 cup = 100 g");
        larder.recipe("dough").uses("10 cup", "flour").makes("1 kg", "dough").done();
        LiveCosts costs = larder.costs();
        assertThat(costs.recipe("dough").orElseThrow().batch().amount()).isEqualByComparingTo("1");
        larder.bought("flour", "1.00", "1 kg", "1 cup = 125 g");
        assertThat(costs.recipe("dough").orElseThrow().batch().amount()).isEqualByComparingTo("1.25");
    }

    @Test
    void costsItemsWhenThereAreNoRecipes() {
        Larder larder = new Larder().bought("cream", "4.00", "1 l");
        LiveCosts costs = larder.costs().with(null, List.of(larder.written()));
        assertThat(costs.recipes()).isEmpty();
        assertThat(costs.item("cream").orElseThrow().price()).isEqualTo(UnitPrice.of("4.00", "1 l"));
    }

    @Test
    void explainsAPlateDownToThePrices() {
        LiveCosts costs = bird().recipe("plate")
                .uses("190 g", "breast")
                .makes("1 portion", "plate")
                .done()
                .costs();
        Explanation plate = costs.explain("plate").orElseThrow();
        Explanation line = plate.parts().stream()
                .filter(part -> part.title().startsWith("breast"))
                .findFirst()
                .orElseThrow();
        assertThat(line.value()).isEqualTo("2.58 EUR");
        assertThat(line.parts().get(0).parts()).extracting(Explanation::title).anyMatch(t -> t.startsWith("fowl"));
    }

    @Test
    void showsPricesOfZeroAndOfATrillionAlike() {
        RecipeCost cost = new Larder()
                .bought("water", "0", "1 l")
                .bought("gold", "1000000000000", "1 kg")
                .recipe("gilt")
                .uses("1 l", "water")
                .uses("1 mg", "gold")
                .makes("1 l", "gilt")
                .done()
                .costs()
                .recipe("gilt")
                .orElseThrow();
        assertThat(cost.batch().amount()).isEqualByComparingTo("1000000");
        assertThat(cost.missing()).isEmpty();
    }
}
