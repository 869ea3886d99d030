package etamine.recipes.internal.need;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Problem;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.internal.Range;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RequirementTest {
    private static final String BREAKDOWN = """
            {"id": "fowl-breakdown", "name": "Guinea fowl, broken down", "kind": "breakdown",
             "uses": [{"item": "guinea-fowl", "quantity": "1.4 kg"}],
             "makes": [{"item": "fowl-breast", "quantity": "380 g"}, {"item": "fowl-leg", "quantity": "400 g"},
                       {"item": "fowl-carcass", "quantity": "420 g"}]}""";
    private static final String PUREE = """
            {"id": "celeriac-puree", "name": "Celeriac purée", "kind": "component",
             "uses": [{"item": "celeriac", "quantity": "2 cup", "as": "peeled, large dice", "basis": "EP"},
                      {"item": "cream", "quantity": "120 ml"}],
             "makes": [{"item": "celeriac-puree", "quantity": "380 g"}], "portion": "70 g"}""";
    private static final String PLATE = """
            {"id": "plate-fowl", "name": "Guinea fowl, celeriac", "kind": "plate",
             "uses": [{"item": "fowl-breast", "quantity": "120 g"}, {"item": "celeriac-puree", "quantity": "1 portion"}],
             "makes": [{"item": "plate-fowl", "quantity": "1 portion"}]}""";
    private static final String STOCK = """
            {"id": "fowl-stock", "name": "Fowl stock", "kind": "component",
             "uses": [{"item": "fowl-carcass", "quantity": "840 g"}],
             "makes": [{"item": "fowl-stock", "quantity": "2 l"}]}""";

    private final Range range = new Range();

    private void kitchen() {
        range.item("guinea-fowl", "kg");
        range.item("cream", "l");
        range.item(
                "celeriac",
                "kg",
                List.of(Range.prepared("peeled, large dice", "0.74", "1 cup = 156 g")),
                "1 ea = 750 g");
        range.load(BREAKDOWN, PUREE, PLATE, STOCK);
    }

    private Requirement require(String item, String quantity) {
        return range.recipes.require(Map.of(item, Quantity.parse(quantity)), Map.of());
    }

    private static String rounded(Quantity quantity, int places) {
        return quantity.amount().toDecimal(places, RoundingMode.HALF_UP).toPlainString() + " " + quantity.unit();
    }

    @Test
    void followsAPlateDownToWhatIsBought() {
        kitchen();

        Requirement need = require("plate-fowl", "38 portion");

        assertThat(need.problems()).isEmpty();
        // 38 x 120 g = 4560 g of breast = 12 batches of 380 g, each from 1.4 kg
        assertThat(need.bought().get("guinea-fowl")).isEqualTo(Quantity.parse("16800 g"));
        // 38 x 70 g = 2660 g = 7 batches of 380 g; each 2 cups x 156 g = 312 g EP, / 0.74 as purchased
        assertThat(need.batches().get("celeriac-puree")).isEqualTo(Ratio.of(7));
        assertThat(rounded(need.bought().get("celeriac"), 3)).isEqualTo("2951.351 g");
        assertThat(need.bought().get("cream")).isEqualTo(Quantity.parse("840 ml"));
        assertThat(need.parts().get("cream")).isEqualTo(Map.of("celeriac-puree", Quantity.parse("840 ml")));
        assertThat(need.bought()).doesNotContainKey("fowl-breast");
    }

    @Test
    void countsWhatOneBatchMakesTogetherOnce() {
        kitchen();

        Requirement need = range.recipes.require(
                Map.of("fowl-breast", Quantity.parse("760 g"), "fowl-leg", Quantity.parse("2 kg")), Map.of());

        // breasts want 2 batches, legs want 5: the legs decide and the breasts come along
        assertThat(need.batches()).isEqualTo(Map.of("fowl-breakdown", Ratio.of(5)));
        assertThat(need.bought()).isEqualTo(Map.of("guinea-fowl", Quantity.parse("7000 g")));
    }

    @Test
    void letsAStockTakeTheCarcassesThatThePlatesLeaveOver() {
        kitchen();

        Requirement need = range.recipes.require(
                Map.of("plate-fowl", Quantity.parse("38 portion"), "fowl-stock", Quantity.parse("2 l")), Map.of());

        // the stock wants 840 g = 2 carcasses, the plates leave 12
        assertThat(need.batches().get("fowl-breakdown")).isEqualTo(Ratio.of(12));
        assertThat(need.batches().get("fowl-stock")).isEqualTo(Ratio.ONE);
    }

    @Test
    void usesWhatIsMadeAlreadyFirst() {
        kitchen();

        Requirement need = range.recipes.require(
                Map.of("plate-fowl", Quantity.parse("38 portion")),
                Map.of(
                        "celeriac-puree", Quantity.parse("30 portion"),
                        "fowl-breast", Quantity.parse("9 kg"),
                        "cream", Quantity.parse("5 l")));

        // 2660 g less 30 portions of 70 g leaves 560 g; breasts are there; cream is bought, so it doesn't count here
        assertThat(need.batches().get("celeriac-puree")).isEqualTo(Ratio.of(560, 380));
        assertThat(need.batches()).doesNotContainKey("fowl-breakdown");
        assertThat(rounded(need.bought().get("cream"), 2)).isEqualTo("176.84 ml");
    }

    @Test
    void namesTheMissingMeasureAndTheLineAndFollowsTheOthers() {
        range.item("celeriac", "kg", List.of(Range.prepared("peeled, large dice", "0.74")));
        range.item("cream", "l");
        range.load(PUREE);

        Requirement need = require("celeriac-puree", "380 g");

        assertThat(need.bought()).containsOnlyKeys("cream");
        assertThat(need.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("missing-equivalence");
            assertThat(problem.where()).isEqualTo("recipes/celeriac-puree");
            assertThat(problem.text()).startsWith("Celeriac purée, line 1 (2 cup celeriac): Add what 1 cup weighs");
        });
    }

    @Test
    void saysWhichItemNobodyKnows() {
        range.item("celeriac", "kg", List.of(Range.prepared("peeled, large dice", "0.74", "1 cup = 156 g")));
        range.load(PUREE);

        assertThat(require("celeriac-puree", "380 g").problems())
                .extracting(Problem::code)
                .containsExactly("unknown-item");
        assertThat(require("nothing", "1 kg").problems())
                .extracting(Problem::code)
                .containsExactly("unknown-item");
    }

    @Test
    void worksAsWrittenWithoutAnIngredientList() {
        range.closeList();
        range.load(PUREE, PLATE, BREAKDOWN);

        Requirement need = require("plate-fowl", "38 portion");

        assertThat(need.bought().get("guinea-fowl")).isEqualTo(Quantity.parse("16800 g"));
        assertThat(need.bought().get("celeriac").in(Unit.CUP)).isEqualTo(Quantity.parse("14 cup"));
        assertThat(need.problems()).extracting(Problem::code).containsExactly("unknown-preparation");
    }

    @Test
    void endsOnALoopAndSaysSo() {
        range.item("water", "l");
        range.load("""
                {"id": "stock", "name": "Stock", "kind": "component", "uses": [{"item": "jus", "quantity": "1 l"}],
                 "makes": [{"item": "stock", "quantity": "2 l"}]}""", """
                {"id": "jus", "name": "Jus", "kind": "component", "uses": [{"item": "stock", "quantity": "1 l"}],
                 "makes": [{"item": "jus", "quantity": "1 l"}]}""");

        assertThat(require("jus", "1 l").problems()).extracting(Problem::code).contains("loop");
    }

    // USDA SR28 (2015), FOOD_DES, field Refuse (published); yield = 100 - refuse, AP = EP / yield (computed)
    @ParameterizedTest(name = "row {0}: {3} EP of {1}")
    @CsvSource(textBlock = """
            11080, beets,        33, 1 kg,   1492.537
            11124, carrots,      11, 890 g,  1000.000
            11135, cauliflower,  61, 390 g,  1000.000
            11282, onions,       10, 1 kg,   1111.111
            11352, potatoes,     25, 3 kg,   4000.000
            01123, eggs,         12, 440 g,   500.000
            05057, breast,       20, 800 g,  1000.000
            15270, shrimp,       13, 2 lb,   1042.741
            """)
    void goesBackFromEdiblePortionToAsPurchased(String row, String food, int refuse, String edible, String grams) {
        Item item = range.item(food, "kg", List.of(Range.prepared("trimmed", (100 - refuse) + "/100")));

        Use use = new Use(food, Quantity.parse(edible), Optional.of("trimmed"), Basis.EP);

        assertThat(rounded(use.asPurchased(item).orThrow(), 3)).isEqualTo(grams + " g");
    }

    @Test
    void agreesWithPublishedYieldArithmetic() {
        // G. Wall, Trade Calculations, striploin: 5.2 kg AP, 4.6 kg EP, 85 portions of 170 g (published); 14.45 kg EP
        // and 16.33 kg AP (computed)
        Item striploin = range.item("striploin", "kg", List.of(Range.prepared("trimmed", "46/52")));
        Quantity portions = Quantity.parse("170 g").times(Ratio.of(85));
        assertThat(portions).isEqualTo(Quantity.parse("14450 g"));
        Use steaks = new Use("striploin", portions, Optional.of("trimmed"), Basis.EP);
        assertThat(rounded(steaks.asPurchased(striploin).orThrow().in(Unit.KG), 2))
                .isEqualTo("16.33 kg");

        // A culinary-arithmetic exercise: 20 lb EP cabbage / 0.79 = 25.3 lb AP (secondary)
        Item cabbage = range.item("cabbage", "lb", List.of(Range.prepared("cored", "0.79")));
        Use shredded = new Use("cabbage", Quantity.parse("20 lb"), Optional.of("cored"), Basis.EP);
        assertThat(rounded(shredded.asPurchased(cabbage).orThrow().in(Unit.LB), 1))
                .isEqualTo("25.3 lb");
    }

    @Test
    void multipliesYieldsInsteadOfAddingLosses() {
        // 2.000 kg bone-in chicken breast x 0.80 (USDA SR28 row 05057, published) x 0.72 roasted (USDA Table of Cooking
        // Yields, Release 2, 2014, NDB 5060, secondary) = 1.152 kg (computed)
        range.item("breast", "kg", List.of(Range.prepared("boned", "0.80")));
        range.load("""
                {"id": "roast", "name": "Roast breast", "kind": "component",
                 "uses": [{"item": "breast", "quantity": "1 kg", "as": "boned"}],
                 "makes": [{"item": "roast", "quantity": "720 g"}]}""");

        assertThat(require("roast", "1152 g").bought().get("breast")).isEqualTo(Quantity.parse("2000 g"));
    }

    @Test
    void takesTrimmedPiecesAsThePiecesTheyWere() {
        Item onion = range.item("onion", "kg", List.of(Range.prepared("peeled", "0.9")), "1 ea = 150 g");
        Use three = new Use("onion", Quantity.parse("3 ea"), Optional.of("peeled"), Basis.EP);

        assertThat(three.asPurchased(onion).orThrow()).isEqualTo(Quantity.parse("450 g"));
    }

    @Test
    void weighsTrimmedPiecesThatHaveAMeasureOfTheirOwn() {
        Item egg = range.item("egg", "kg", List.of(Range.prepared("shelled", "0.88", "1 ea = 50 g")), "1 ea = 57 g");
        Use four = new Use("egg", Quantity.parse("4 ea"), Optional.of("shelled"), Basis.EP);

        // USDA SR28 row 01123: large egg 50 g edible, refuse 12 % (published): 200 / 0.88 = 227.27 (computed)
        assertThat(rounded(four.asPurchased(egg).orThrow(), 2)).isEqualTo("227.27 g");
    }
}
