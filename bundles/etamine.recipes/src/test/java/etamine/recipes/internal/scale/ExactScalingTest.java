package etamine.recipes.internal.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.Scaled;
import etamine.recipes.internal.Range;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExactScalingTest {
    private final Range range = new Range();

    private Scaled.Batch scaled(Scaled scaled) {
        assertThat(scaled).isInstanceOf(Scaled.Batch.class);
        return (Scaled.Batch) scaled;
    }

    private void recipe(String makes, String portion) {
        range.item("flour", "kg");
        range.load("""
                {"id": "it", "name": "It", "kind": "component",
                 "uses": [{"item": "flour", "quantity": "1/3 cup"}, {"item": "flour", "quantity": "454 g"}],
                 "makes": [{"item": "it", "quantity": "%s"}, {"item": "trim", "quantity": "7 g"}]%s}""".formatted(makes, portion.isEmpty() ? "" : ", \"portion\": \"" + portion + "\""));
    }

    // Recipe conversion factor = new yield / old yield. BCcampus method, 75 to 300 and 30 to 90 biscuits (secondary);
    // theculinarypro.com, 2 to 1.5 gal (secondary); exercises, broccoli 10 to 15, crepes 20 to 5 (secondary);
    // chefhelp.ca, (50 x 0.230) / (35 x 0.185), used there as 1.78 (secondary); product yield, 300 pies of 2.5 lb from
    // 40 lb cases: 18.75 and so 19 cases (secondary, computed)
    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource(textBlock = """
            75 ea,    300 ea,    4.00000,  4
            30 ea,    90 ea,     3.00000,  3
            2 gal,    1.5 gal,   0.75000,  1
            10 portion, 15 portion, 1.50000, 2
            20 ea,    5 ea,      0.25000,  1
            6.475 kg, 11.5 kg,   1.77606,  2
            40 lb,    750 lb,   18.75000, 19
            """)
    void dividesTheNewYieldByTheOld(String old, String wanted, String factor, long batches) {
        recipe(old, "");

        Scaled.Batch batch = scaled(range.scaling.to("it", Quantity.parse(wanted)));

        assertThat(batch.factor().toDecimal(5, RoundingMode.HALF_UP)).hasToString(factor);
        assertThat(batch.batches()).isEqualTo(batches);
    }

    @Test
    void scalesLinesExactly() {
        recipe("20 ea", "");

        Recipe quarter = scaled(range.scaling.to("it", Quantity.parse("5 ea"))).recipe();

        // 454 g of milk become 113.5 g (crepe exercise, secondary)
        assertThat(quarter.uses().get(1).quantity()).isEqualTo(Quantity.parse("113.5 g"));
        assertThat(quarter.uses().get(0).quantity()).isEqualTo(Quantity.parse("1/12 cup"));
        assertThat(quarter.makes().get(1).quantity()).isEqualTo(Quantity.parse("7/4 g"));
    }

    @ParameterizedTest
    @CsvSource({"7/3", "1.77606", "1/999", "18.75", "123456789/987654321"})
    void comesBackExactlyWhenScaledThereAndBack(String factor) {
        recipe("6.475 kg", "185 g");
        Recipe recipe = range.recipe("it");
        Ratio k = Ratio.parse(factor);

        Recipe back = range.scaling.times(range.scaling.times(recipe, k), Ratio.ONE.dividedBy(k));

        assertThat(back).isEqualTo(recipe);
    }

    @Test
    void scalesToPortionsThroughTheirSize() {
        recipe("380 g", "70 g");

        // 12 portions of 70 g are 840 g, 840 / 380 = 42/19
        assertThat(scaled(range.scaling.to("it", Quantity.parse("12 portion"))).factor())
                .isEqualTo(Ratio.of(42, 19));
        assertThat(scaled(range.scaling.forCovers("it", Ratio.of(12))).factor()).isEqualTo(Ratio.of(42, 19));
    }

    @Test
    void saysWhatIsMissing() {
        recipe("380 g", "");

        assertThat(range.scaling.forCovers("it", Ratio.of(4)))
                .isEqualTo(new Scaled.Impossible("It makes 380 g. Write the size of its portion."));
        assertThat(range.scaling.to("it", Quantity.parse("1 l")))
                .isInstanceOfSatisfying(
                        Scaled.Impossible.class, no -> assertThat(no.text()).contains("Add what 1"));
        assertThat(range.scaling.to("it", Quantity.parse("0 g"))).isInstanceOf(Scaled.Impossible.class);
        assertThat(range.scaling.to("other", Quantity.parse("1 g"))).isInstanceOf(Scaled.Impossible.class);
    }

    @Test
    void remarksOnWhatDoesNotFollowTheFactor() {
        range.item("flour", "kg");
        range.item("fine-salt", "kg");
        range.item("baking powder", "kg");
        range.load("""
                {"id": "it", "name": "It", "kind": "component",
                 "uses": [{"item": "flour", "quantity": "950 g"}, {"item": "fine-salt", "quantity": "20 g"},
                          {"item": "baking powder", "quantity": "30 g"}],
                 "makes": [{"item": "it", "quantity": "1 kg"}],
                 "steps": [{"id": "bake", "text": "Bake.", "unattended": "PT40M"}]}""");

        assertThat(scaled(range.scaling.to("it", Quantity.parse("5 kg"))).remarks())
                .satisfiesExactly(
                        salt -> assertThat(salt).contains("three quarters of the fine-salt"),
                        rise -> assertThat(rise).contains("baking powder"),
                        times -> assertThat(times).contains("one batch"));
        assertThat(scaled(range.scaling.to("it", Quantity.parse("1.2 kg"))).remarks())
                .isEmpty();
    }

    private Report run(Map<String, String> options, String... arguments) throws VerbException {
        return new ScaleVerb(range.scaling, new VesselSizes(), range.lines, range.cards)
                .run(new VerbCall(List.of(arguments), options, "", Path.of(""), Progress.unseen()));
    }

    @Test
    void printsTheScaledRecipe() throws VerbException {
        recipe("380 g", "70 g");

        Report report = run(Map.of("--to", "1,9 kg"), "it");

        assertThat(report.outcome()).isEqualTo(Outcome.DONE);
        assertThat(report.json())
                .asString()
                .contains(
                        "factor=5, asked=5, uses=[{item=flour, quantity=5/3 cup, basis=AP, practical=5/3 cup, offPercent=0.0}")
                .contains("makes=[{item=it, quantity=1900 g, practical=1.9 kg")
                .contains("batches=5");
        assertThat(report.lines().get(0)).isEqualTo("It, multiplied by 5; 5 batches if made whole");
        assertThat(String.join("\n", report.lines())).contains("2.27 kg");
    }

    @Test
    void refusesWrongCallsPlainly() {
        recipe("380 g", "70 g");

        assertThatThrownBy(() -> run(Map.of("--vessels", "12 x 130 ml"), "it")).hasMessageContaining("Add what 1");
        assertThatThrownBy(() -> run(Map.of("--have", "much"), "it")).hasMessageContaining("celeriac=2.4 kg");
        assertThatThrownBy(() -> run(Map.of("--have", "turnip=2 kg"), "it")).hasMessageContaining("No item is called");
        assertThatThrownBy(() -> run(Map.of("--to", "1 kg", "--covers", "3"), "it"))
                .hasMessageContaining("one way");
        assertThatThrownBy(() -> run(Map.of(), "it")).hasMessageContaining("--to");
        assertThatThrownBy(() -> run(Map.of("--to", "much"), "it"))
                .isInstanceOfSatisfying(
                        VerbException.class,
                        wrong -> assertThat(wrong.outcome()).isEqualTo(Outcome.WRONG_CALL));
        assertThatThrownBy(() -> run(Map.of("--covers", "4"), "nothing")).hasMessageContaining("no recipe");
    }
}
