package etamine.recipes.internal.weight;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Problem;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.MassBalance;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.Range;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchWeightsTest {
    private final Range range = new Range();

    @BeforeEach
    void list() {
        range.item(
                "breast",
                "kg",
                List.of(
                        Range.prepared("boned", "0.8"),
                        Range.prepared("peeled", "1"),
                        Range.prepared("soaked", "1.5")));
        range.item("water", "l", List.of(), "1 l = 1 kg");
        range.item("wine", "l");
        range.item("bean", "kg");
    }

    private Recipe recipe(String uses, String makes, String more) {
        range.load(
                "{\"id\": \"it\", \"name\": \"It\", \"uses\": [" + uses + "], \"makes\": [" + makes + "]" + more + "}");
        return range.recipe("it");
    }

    private static String line(String item, String quantity, String more) {
        return "{\"item\": \"" + item + "\", \"quantity\": \"" + quantity + "\"" + more + "}";
    }

    private List<String> codes(Recipe recipe) {
        return range.writing.problems(recipe).stream().map(Problem::code).toList();
    }

    // Yields multiply: 2.000 kg bone-in chicken breast x 0.80 (USDA SR28, 2015, row 05057: refuse 20 % - published)
    // x 0.72 roasted (USDA Table of Cooking Yields for Meat and Poultry, Release 2, 2014, Table 1 - secondary)
    // = 1.152 kg (computed); the whole loss is 42.4 %, not 20 + 28 %
    @Test
    void multipliesTrimAndCookingYields() {
        Recipe roast = recipe(
                line("breast", "2 kg", ", \"as\": \"boned\", \"basis\": \"AP\""), line("it", "1.152 kg", ""), "");

        MassBalance balance = range.balances.of(roast);

        assertThat(balance.bought()).isEqualTo(Quantity.parse("2000 g"));
        assertThat(balance.trim()).isEqualTo(Quantity.parse("400 g"));
        assertThat(balance.in()).isEqualTo(Quantity.parse("1600 g"));
        assertThat(balance.lost()).contains(Quantity.parse("448 g"));
        assertThat(balance.out().dividedBy(balance.in())).hasToString("0.72");
        assertThat(balance.out().dividedBy(balance.bought())).hasToString("0.576");
        assertThat(codes(roast)).isEmpty();
    }

    // 1.6 kg of boned breast and 1 kg of water in, 1.2 kg out, 1.4 kg lost (computed)
    @Test
    void losesWhatTheRiverLosesWhereEverythingHasAWeight() {
        Recipe poached = recipe(
                line("breast", "2 kg", ", \"as\": \"boned\", \"basis\": \"AP\"") + "," + line("water", "1 l", ""),
                line("it", "1.2 kg", ""),
                "");
        ItemView items = new ItemView(
                id -> range.known().flatMap(known -> known.find(id)),
                range.known().isPresent());

        WeighedBatch batch = new WeighedBatch(poached, new LineScale(items, Dimension.MASS));

        assertThat(new Quantity(batch.difference(), Unit.G)).isEqualTo(Quantity.parse("1400 g"));
        assertThat(range.balances.of(poached).lost()).contains(Quantity.parse("1400 g"));
    }

    // Cooking losses. B. Lowe, Experimental Cookery, table of average cooking losses: seven hams roasted, 126 lb 15 oz
    // to
    // 94 lb 7 oz, six legs of veal, 107 lb 2 oz to 76 lb 1 oz (secondary; other rows disagree with their weights).
    // Chicken breast roasted 150 g to 108 g, 72 % (USDA Table of Cooking Yields, Release 2, 2014, NDB 5060 -
    // secondary).
    // Onions fresh to cooked 0.78 (USDA Food Buying Guide, column 6 - secondary). Half of the last printed digit
    @ParameterizedTest
    @CsvSource({"2031 oz, 1511 oz, 25.6", "1714 oz, 1217 oz, 29.0", "150 g, 108 g, 28.0", "1 lb, 0.78 lb, 22.0"})
    void tellsTheLossesOfPublishedCookingTests(String raw, String cooked, String percent) {
        MassBalance balance = range.balances.of(recipe(line("bean", raw, ""), line("it", cooked, ""), ""));

        assertThat(balance.lost()
                        .orElseThrow()
                        .dividedBy(balance.in())
                        .times(Ratio.of(100))
                        .toDecimal(1, RoundingMode.HALF_UP))
                .hasToString(percent);
    }

    @Test
    void takesAStatedWeightAfterTrimmingBackToWhatWasBought() {
        MassBalance balance =
                range.balances.of(recipe(line("breast", "1.6 kg", ", \"as\": \"boned\""), line("it", "1 kg", ""), ""));

        assertThat(balance.bought()).isEqualTo(Quantity.parse("2000 g"));
        assertThat(balance.inputs().get(0).used()).contains(Quantity.parse("1600 g"));
    }

    // Dry beans to cooked 1.979 (USDA Food Buying Guide, column 6 with SR28 row 16043 - computed); without the water
    // they cannot weigh more than they did
    @Test
    void wantsToKnowWhereWaterTakenUpComesFrom() {
        Recipe dry = recipe(line("bean", "500 g", ""), line("it", "989.5 g", ""), "");
        assertThat(codes(dry)).containsExactly("mass-balance");

        Recipe wet = recipe(line("bean", "500 g", ""), line("it", "989.5 g", ""), ", \"absorbs\": \"490 ml\"");
        assertThat(codes(wet)).isEmpty();
        assertThat(range.balances.of(wet).added()).isEqualTo(Quantity.parse("490 g"));
        Recipe soaked =
                recipe(line("breast", "1 kg", ", \"as\": \"soaked\", \"basis\": \"AP\""), line("it", "1.5 kg", ""), "");
        assertThat(codes(soaked)).isEmpty();
        assertThat(range.balances.of(soaked).added()).isEqualTo(Quantity.parse("500 g"));
    }

    // Reduction: 4 l down to 1 l is a yield of 25 % (computed, mass balance); off by more than a tenth of it is told
    @ParameterizedTest
    @CsvSource({"1 l, ''", "1.1 l, ''", "0.9 l, ''", "1.11 l, reduction", "2 l, reduction", "0.5 l, reduction"})
    void comparesAReductionWithItsStatedShare(String made, String code) {
        Recipe reduced = recipe(line("water", "4 l", ""), line("it", made, ""), ", \"reducesTo\": \"0.25\"");

        assertThat(codes(reduced)).isEqualTo(code.isEmpty() ? List.of() : List.of(code));
    }

    @Test
    void comparesReductionsOfWhatHasNoWeightByVolumeOrSaysWhatIsMissing() {
        assertThat(codes(recipe(line("wine", "2 l", ""), line("it", "500 ml", ""), ", \"reducesTo\": \"1/4\"")))
                .isEmpty();
        Recipe unclear = recipe(
                line("wine", "2 l", "") + "," + line("bean", "1 kg", ""),
                line("it", "500 ml", ""),
                ", \"reducesTo\": \"1/4\"");
        assertThat(range.writing.problems(unclear)).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("reduction-unknown");
            assertThat(problem.text()).contains("wine: Add what 1 ml weighs");
        });
    }

    @Test
    void namesWhatCannotBeWeighed() {
        MassBalance balance = range.balances.of(
                recipe(line("wine", "1 l", "") + "," + line("nothing", "1 kg", ""), line("it", "1 l", ""), ""));

        assertThat(balance.complete()).isFalse();
        assertThat(balance.lost()).isEmpty();
        assertThat(balance.unweighed())
                .satisfiesExactly(
                        wine -> assertThat(wine).startsWith("wine: Add what"),
                        nothing -> assertThat(nothing).startsWith("nothing: there is no such item"),
                        it -> assertThat(it).startsWith("It: Add what"));
    }

    @Test
    void doubtsAPortionLargerThanTheBatchAndAPreparationThatTrimsNothing() {
        assertThat(codes(recipe(line("bean", "1 kg", ""), line("it", "800 g", ""), ", \"portion\": \"1 kg\"")))
                .containsExactly("portion-too-large");
        assertThat(codes(recipe(line("breast", "1 kg", ", \"as\": \"peeled\""), line("it", "800 g", ""), "")))
                .containsExactly("no-yield");
    }
}
