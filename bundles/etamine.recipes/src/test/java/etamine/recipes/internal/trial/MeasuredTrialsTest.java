package etamine.recipes.internal.trial;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Problem;
import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.BatchTest.Weighed;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.Change;
import etamine.recipes.MeasuredYield;
import etamine.recipes.Trust;
import etamine.recipes.internal.Range;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class MeasuredTrialsTest {
    private final Range range = new Range();

    @BeforeEach
    void bird() {
        range.item("bird", "kg");
        range.load("""
                {"id": "bird-breakdown", "name": "Bird, broken down", "kind": "breakdown",
                 "uses": [{"item": "bird", "quantity": "2 kg"}],
                 "makes": [{"item": "breast", "quantity": "600 g"}, {"item": "leg", "quantity": "0.6 kg"}]}""");
    }

    private static BatchTest test(int day, String in, String breast, String leg) {
        return new BatchTest(
                LocalDate.of(2026, 11, day),
                "Cook",
                Quantity.parse(in),
                List.of(new Weighed("breast", Quantity.parse(breast)), new Weighed("leg", Quantity.parse(leg))),
                "",
                false);
    }

    private Recipe whole() {
        return range.recipe("bird-breakdown");
    }

    private void record(BatchTest test) {
        assertThat(range.trials.record("bird-breakdown", test)).isInstanceOf(Change.Done.class);
    }

    @Test
    void tellsMeanAndSpreadOfWhatWasWeighed() {
        record(test(3, "1.5 kg", "450 g", "300 g"));
        record(test(1, "1 kg", "280 g", "300 g"));
        record(test(2, "2 kg", "640 g", "500 g"));

        List<MeasuredYield> yields = range.trials.measured(whole());

        // shares of 0.30, 0.28 and 0.32: mean 0.30, sample deviation 0.02; 0.30 of 2 kg are 600 g (computed)
        assertThat(yields.get(0).measured().orElseThrow().mean()).isEqualTo(Ratio.parse("0.3"));
        assertThat(yields.get(0).measured().orElseThrow().deviation()).contains(Ratio.parse("0.02"));
        assertThat(yields.get(0).working()).contains(Quantity.parse("600 g"));
        assertThat(yields.get(0).written()).contains(Ratio.parse("0.3"));
        // 0.20, 0.30 and 0.25: mean 0.25
        assertThat(yields.get(1).working()).contains(Quantity.parse("0.5 kg"));
        assertThat(whole().standing().tests()).extracting(BatchTest::date).isSorted();
    }

    @Test
    void makesTheMeanTheWorkingYieldInOneStepThatCanBeUndone() {
        record(test(1, "1 kg", "280 g", "300 g"));
        record(test(2, "2 kg", "640 g", "500 g"));
        record(test(3, "3 kg", "100 g", "100 g"));

        assertThat(range.trials.accept("bird-breakdown", List.of(0, 1))).isInstanceOf(Change.Done.class);

        assertThat(whole().makes())
                .extracting(make -> make.quantity().toString())
                .containsExactly("600 g", "0.55 kg");
        assertThat(whole().standing().tests()).extracting(BatchTest::accepted).containsExactly(true, true, false);
        assertThat(range.book.history().undo()).contains("Accept the measured yield of Bird, broken down");
        assertThat(whole().makes())
                .extracting(make -> make.quantity().toString())
                .containsExactly("600 g", "0.6 kg");
        assertThat(whole().standing().tests()).extracting(BatchTest::accepted).containsOnly(false);
    }

    @Test
    void refusesTestsThatTellNothing() {
        assertThat(texts(range.trials.record("bird-breakdown", test(1, "0 kg", "1 g", "1 g"))))
                .contains("went in");
        assertThat(texts(range.trials.record("bird-breakdown", test(1, "1 ea", "1 g", "1 g"))))
                .contains("weight");
        assertThat(texts(range.trials.record("bird-breakdown", test(1, "1 kg", "1 wing", "1 g"))))
                .contains("has no weight");
        BatchTest other = new BatchTest(
                LocalDate.EPOCH,
                "",
                Quantity.parse("1 kg"),
                List.of(new Weighed("wing", Quantity.parse("1 g"))),
                "",
                false);
        assertThat(texts(range.trials.record("bird-breakdown", other))).contains("does not make “wing”");
        assertThat(texts(range.trials.accept("bird-breakdown", List.of()))).contains("0 tests");
        assertThat(texts(range.trials.forget("bird-breakdown", 3))).contains("0 tests");
    }

    private static String texts(Change change) {
        assertThat(change).isInstanceOf(Change.Refused.class);
        return ((Change.Refused) change).problems().stream().map(Problem::text).reduce("", String::concat);
    }

    @Test
    void takesATestOutAgain() {
        record(test(1, "1 kg", "280 g", "300 g"));

        assertThat(range.trials.forget("bird-breakdown", 0)).isInstanceOf(Change.Done.class);

        assertThat(whole().standing().tests()).isEmpty();
    }

    // Standardised: at least three good tries, with equipment, yield, portion and control points written down
    // (Institute of Child Nutrition, theicn.org; National Food Service Management Institute, Measuring Success with
    // Standardized Recipes, 2002, p. 3 - secondary)
    @Test
    void standsOnThreeTriesAndWhatMakesThemRepeatable() {
        assertThat(range.trials.trust(whole()).level()).isEqualTo(Trust.Level.DRAFT);
        for (int i = 0; i < 3; i++) {
            range.trials.tried("bird-breakdown");
        }
        Trust tested = range.trials.trust(whole());
        assertThat(tested.level()).isEqualTo(Trust.Level.TESTED);
        assertThat(tested.missing())
                .containsExactly(
                        "Write the size of a portion.",
                        "Name the equipment in the steps.",
                        "Write a control point: the temperature of a step, or how long its result holds.");

        Step step = new Step("a", "Cut.", Duration.ZERO, Duration.ZERO, "board", List.of(), "5 °C", Duration.ZERO, "");
        Recipe full = whole().withSteps(List.of(step)).withPortion(Optional.of(Quantity.parse("20 g")));
        Trust standard = range.trials.trust(full);
        assertThat(standard.level()).isEqualTo(Trust.Level.STANDARDISED);
        assertThat(standard.missing()).isEmpty();
        // 600 g in portions of 20 g are 30; a recipe for quantity gives 25 or more (same sources)
        assertThat(standard.portions()).contains(Ratio.of(30));
        assertThat(standard.forQuantity()).isTrue();
    }
}
