package etamine.costing.internal.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import etamine.costing.Experiment;
import etamine.costing.PriceChange;
import etamine.costing.Trial;
import etamine.costing.internal.larder.Larder;
import etamine.costing.internal.live.LiveCosts;
import etamine.kitchen.item.ItemWriter;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.RecipeWriter;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ArrayExperimentsTest {
    private final Larder larder = new Larder()
            .bought("cream", "4.00", "1 l")
            .bought("root", "2.00", "1 kg")
            .prepared("root", "peeled", "0.8")
            .recipe("sauce")
            .uses("0.25 l", "cream")
            .makes("1 l", "sauce")
            .portion("80 ml")
            .done()
            .recipe("plate")
            .uses("1 portion", "sauce")
            .usesTrimmed("100 g", "root", "peeled")
            .makes("1 portion", "plate")
            .sold("11.00", "10", "0")
            .done();
    private final ArrayExperiments experiments = new ArrayExperiments(larder.book, larder.costs());

    private String cost(Experiment experiment) {
        Trial trial = experiments.reckon(experiment);
        assertThat(trial.notes()).isEmpty();
        return trial.plates().get(0).then().cost().amount().stripTrailingZeros().toPlainString();
    }

    private List<String> notes(Experiment experiment) {
        Trial trial = experiments.reckon(experiment);
        assertThat(trial.moved()).isEmpty();
        return trial.notes();
    }

    @Test
    void triesEachKindOfChangeWithoutTouchingTheBook() {
        Experiment none = Experiment.none();
        long revision = larder.book.revision();
        // 0.25 l of cream at 4.00 in a litre: 80 ml carry 0.08; 100 g peeled at 2.00 over 0.8 are 0.25.
        assertThat(cost(none)).isEqualTo("0.33");
        assertThat(cost(none.withPrice("cream", PriceChange.by(new BigDecimal("14")))))
                .isEqualTo("0.3412");
        assertThat(cost(none.withPrice("cream", PriceChange.to(UnitPrice.of("5.00", "1 l")))))
                .isEqualTo("0.35");
        assertThat(cost(none.withYield("root", "peeled", Ratio.parse("0.5")))).isEqualTo("0.48");
        assertThat(cost(none.withGives("sauce", Quantity.parse("0.8 l")))).isEqualTo("0.35");
        assertThat(cost(none.withPortion("sauce", Quantity.parse("120 ml")))).isEqualTo("0.37");
        assertThat(cost(none.withLine("plate", 1, Quantity.parse("140 g")))).isEqualTo("0.43");
        assertThat(larder.book.revision()).isEqualTo(revision);
    }

    @Test
    void triesAnotherMenuPrice() {
        Trial.Plate plate = experiments
                .reckon(Experiment.none().withMenuPrice("plate", new BigDecimal("22.00")))
                .plates()
                .get(0);
        assertThat(plate.now().net().amount()).isEqualByComparingTo("10");
        assertThat(plate.then().net().amount()).isEqualByComparingTo("20");
        assertThat(plate.contributionChange().amount()).isEqualByComparingTo("10");
        assertThat(plate.change().isZero()).isTrue();
        assertThat(plate.moved()).isTrue();
    }

    @Test
    void saysWhatCannotBeTried() {
        Experiment none = Experiment.none();
        assertThat(notes(none.withPrice("sauce", PriceChange.by(BigDecimal.TEN))))
                .containsExactly("sauce is made here: change what goes into it.");
        assertThat(notes(none.withPrice("cream", PriceChange.to(UnitPrice.of("3", "1 ea"))))
                        .get(0))
                .contains("cream: a price per 1 ea cannot be used")
                .contains("1 ea");
        assertThat(notes(none.withYield("root", "peeled", Ratio.ZERO)).get(0)).contains("more than 0");
        assertThat(notes(none.withYield("root", "grated", Ratio.ONE)).get(0)).contains("no preparation");
        assertThat(notes(none.withLine("plate", 7, Quantity.parse("1 g"))).get(0))
                .contains("no line 8");
        assertThat(notes(none.withLine("plate", 1, Quantity.parse("1 cup"))).get(0))
                .contains("root");
        assertThat(notes(none.withPortion("ghost", Quantity.parse("1 g"))).get(0))
                .contains("no recipe");
        assertThat(notes(none.withMenuPrice("sauce", BigDecimal.ONE)).get(0)).contains("not on the menu");
    }

    /** Trying a price gives what writing it would. */
    @Test
    void agreesWithTheBookAfterTheSameChange() {
        Random random = new Random(3);
        for (int round = 0; round < 50; round++) {
            String price = (1 + random.nextInt(9_000)) / 100.0 + "";
            String yield = (1 + random.nextInt(99)) + "/100";
            String tried = cost(Experiment.none()
                    .withPrice("root", PriceChange.to(UnitPrice.of(price, "1 kg")))
                    .withYield("root", "peeled", Ratio.parse(yield)));
            larder.bought("root", price, "1 kg").prepared("root", "peeled", yield);
            assertThat(tried).isEqualTo(cost(Experiment.none()));
        }
    }

    @Test
    void writesAnAcceptedExperimentInOneStepThatCanBeUndone() {
        Notebook notebook = new Notebook();
        experiments.with(notebook, notebook);
        List<String> notes = experiments.accept(Experiment.none()
                .withPrice("cream", PriceChange.by(new BigDecimal("25")))
                .withYield("root", "peeled", Ratio.parse("0.7"))
                .withMenuPrice("plate", new BigDecimal("12.50")));
        assertThat(notes).isEmpty();
        assertThat(larder.book.shelf("notes").all())
                .extracting(Document::id, Document::json)
                .containsExactly(
                        tuple("cream", "{\"said\":\"5.00 / 1 l\"}"),
                        tuple("plate", "{\"said\":\"12.50\"}"),
                        tuple("root", "{\"said\":\"{peeled=0.7}\"}"));
        assertThat(larder.book.history().undoable()).contains("Accept 3 changes tried out in costing");
        larder.book.history().undo();
        assertThat(larder.book.shelf("notes").all()).isEmpty();
    }

    @Test
    void saysWhenAnotherSourceIsAskedBeforeTheWrittenPrice() {
        LiveCosts costs = larder.costs(larder.source("offer", 10, Map.of("cream", UnitPrice.of("4.10", "1 l"))));
        Notebook notebook = new Notebook();
        List<String> notes = new ArrayExperiments(larder.book, costs)
                .with(notebook, notebook)
                .accept(Experiment.none().withPrice("cream", PriceChange.to(UnitPrice.of("3.00", "1 l"))));
        assertThat(notes).hasSize(1);
        assertThat(notes.get(0)).contains("offer price").contains("asked first");
    }

    @Test
    void writesNothingWhenAnythingCannotBeWritten() {
        long revision = larder.book.revision();
        assertThatThrownBy(() -> experiments.accept(Experiment.none()
                        .withMenuPrice("plate", BigDecimal.TEN)
                        .withYield("root", "peeled", Ratio.ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("more than 0");
        assertThatThrownBy(() -> experiments.accept(Experiment.none().withMenuPrice("plate", BigDecimal.TEN)))
                .hasMessageContaining("recipes module");
        assertThat(larder.book.revision()).isEqualTo(revision);
    }

    /** Notes down what it is told to write. */
    private static final class Notebook implements ItemWriter, RecipeWriter {
        @Override
        public void write(Transaction tx, String item, Optional<UnitPrice> price, Map<String, Ratio> yields) {
            say(tx, item, price.map(UnitPrice::toString).orElseGet(yields::toString));
        }

        @Override
        public void write(Transaction tx, Recipe recipe) {
            say(tx, recipe.id(), recipe.menu().orElseThrow().price().toPlainString());
        }

        private static void say(Transaction tx, String id, String text) {
            tx.save("notes", id, Document.ANY, "{\"said\":\"" + text + "\"}");
        }
    }
}
