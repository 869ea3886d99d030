package etamine.recipes.internal.scale;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.Scaled;
import etamine.recipes.internal.Range;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScalingWaysTest {
    private final Range range = new Range();
    private final VesselSizes vessels = new VesselSizes();

    @BeforeEach
    void list() {
        range.item("celeriac", "kg", List.of(Range.prepared("peeled", "0.8", "1 cup = 160 g")), "1 ea = 750 g");
        range.item("cream", "l", List.of(), "1 l = 1 kg");
        range.load("""
                {"id": "puree", "name": "Puree", "kind": "component",
                 "uses": [{"item": "celeriac", "quantity": "5 cup", "as": "peeled"},
                          {"item": "cream", "quantity": "200 ml"}],
                 "makes": [{"item": "puree", "quantity": "1 l"}], "portion": "100 ml", "absorbs": "30 g"}""", """
                {"id": "tart", "name": "Tart", "kind": "component", "wholeBatches": true,
                 "uses": [{"item": "cream", "quantity": "500 ml"}],
                 "makes": [{"item": "tart", "quantity": "10 portion"}]}""");
    }

    private Scaled.Batch batch(Scaled scaled) {
        assertThat(scaled).isInstanceOf(Scaled.Batch.class);
        return (Scaled.Batch) scaled;
    }

    private String impossible(Scaled scaled) {
        assertThat(scaled).isInstanceOf(Scaled.Impossible.class);
        return ((Scaled.Impossible) scaled).text();
    }

    @Test
    void fillsVessels() {
        Scaled.Batch batch = batch(range.scaling.forVessels("puree", vessels.read("24 x 130 ml")));

        // 24 x 130 ml = 3.12 l
        assertThat(batch.factor()).isEqualTo(Ratio.parse("3.12"));
        assertThat(batch.recipe().uses().get(1).quantity()).hasToString("624 ml");
        assertThat(batch.recipe().making().absorbs()).map(Object::toString).contains("93.6 g");
        assertThat(batch.uses().get(1).text()).isEqualTo("620 ml");
        assertThat(batch.reasons()).containsExactly("24 x 130 ml, filled to the brim, take 3.12 l.");
        assertThat(batch(range.scaling.forVessels("puree", vessels.read("GN 1/1 65 mm, 80 %")))
                        .reasons())
                .satisfiesExactly(
                        filled -> assertThat(filled).contains("filled to 80 %, take 9 l"),
                        caution -> assertThat(caution).contains("holds less"));
    }

    @Test
    void findsTheIngredientThatLimitsABatch() {
        // A batch takes 5 cup x 160 g / 0.8 = 1 kg of celeriac and 200 ml of cream
        Scaled.Batch batch = batch(range.scaling.fromOnHand(
                "puree", Map.of("celeriac", Quantity.parse("2.4 kg"), "cream", Quantity.parse("1 l"))));

        assertThat(batch.factor()).isEqualTo(Ratio.parse("2.4"));
        assertThat(batch.reasons())
                .containsExactly(
                        "The limit is celeriac: 2.4 kg are enough for 2.4 batches.",
                        "There would be enough cream: 1 l for 5 batches.");
        assertThat(batch(range.scaling.fromOnHand("puree", Map.of("celeriac", Quantity.parse("2 ea"))))
                        .factor())
                .isEqualTo(Ratio.parse("1.5"));
    }

    @Test
    void saysWhyWhatIsOnHandTellsNothing() {
        assertThat(impossible(range.scaling.fromOnHand("puree", Map.of("tart", Quantity.parse("1 kg")))))
                .contains("does not use “Tart”")
                .contains("celeriac, cream");
        assertThat(impossible(range.scaling.fromOnHand("puree", Map.of("celeriac", Quantity.parse("1 bunch")))))
                .contains("Add what 1 bunch weighs");
        assertThat(impossible(range.scaling.fromOnHand("puree", Map.of()))).contains("on hand");
        assertThat(impossible(range.scaling.fromOnHand("puree", Map.of("cream", Quantity.parse("0 l")))))
                .contains("not enough for any Puree");
        assertThat(impossible(range.scaling.fromOnHand("tart", Map.of("cream", Quantity.parse("499 ml")))))
                .contains("not enough for one whole batch of Tart");
        assertThat(impossible(range.scaling.to("puree", Quantity.parse("99999999 l"))))
                .contains("million batches");
    }

    @Test
    void makesWholeBatchesWhereABatchCannotBeSplit() {
        Scaled.Batch more = batch(range.scaling.forCovers("tart", Ratio.of(52)));
        Scaled.Batch fewer = batch(range.scaling.fromOnHand("tart", Map.of("cream", Quantity.parse("1.9 l"))));

        assertThat(more.factor()).isEqualTo(Ratio.of(6));
        assertThat(more.asked()).isEqualTo(Ratio.parse("5.2"));
        assertThat(more.batches()).isEqualTo(6);
        assertThat(more.reasons()).singleElement().asString().contains("whole batches");
        assertThat(fewer.factor()).isEqualTo(Ratio.of(3));
        assertThat(fewer.asked()).isEqualTo(Ratio.parse("3.8"));
        assertThat(batch(range.scaling.forCovers("tart", Ratio.of(50))).reasons())
                .isEmpty();
    }

    // Scaling by k and then by 1/k gives the stored quantity exactly: a property, for any k
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void comesBackExactlyFromAnyFactor(long seed) {
        Random random = new Random(seed);
        Recipe recipe = range.recipe("puree");
        for (int i = 0; i < 200; i++) {
            Ratio factor = Ratio.of(1 + random.nextInt(1_000_000), 1 + random.nextInt(1_000_000));
            Recipe there = range.scaling.times(recipe, factor);

            assertThat(range.scaling.times(there, Ratio.ONE.dividedBy(factor))).isEqualTo(recipe);
        }
    }

    @Test
    void roundsNothingThatIsKept() {
        Scaled.Batch batch = batch(range.scaling.to("puree", Quantity.parse("1/3 l")));

        assertThat(batch.recipe().uses().get(1).quantity()).isEqualTo(Quantity.parse("200/3 ml"));
        assertThat(batch.uses().get(1).text()).isEqualTo("67 ml");
        assertThat(batch.uses().get(1).errorPercent()).hasToString("0.5");
    }
}
