package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Use;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.recipes.UseLines.Reading;
import org.junit.jupiter.api.Test;

class UnweighedTest {
    private final Stove stove = new Stove();

    private Use use(String line) {
        return ((Reading.Clear) stove.lines.read(line)).use();
    }

    @Test
    void asksWhatAWordWeighsAndWritesItOnTheIngredient() {
        Use knob = use("2 knob cream");
        Unweighed missing = stove.model.unweighed(knob).orElseThrow();
        assertThat(missing.offer()).isEqualTo("Write what 1 knob of Cream weighs");
        assertThat(missing.problem("2 l")).isPresent();
        assertThat(missing.problem("0 g")).isPresent();

        stove.model.weigh(missing, missing.measure("15 g"));

        assertThat(stove.model.unweighed(knob)).isEmpty();
        assertThat(stove.model.asPurchased(knob)).isEqualTo("30 g");
    }

    @Test
    void writesWhatACupWeighsOnThePreparationThatFillsIt() {
        Use cup = use("1 qt celeriac, peeled, large dice");
        assertThat(stove.model.unweighed(cup)).as("a cup is known").isEmpty();
        stove.starter.prepare(
                "celeriac",
                new etamine.kitchen.item.Preparation(
                        "grated", etamine.measures.Ratio.parse("0.8"), java.util.List.of()));
        Unweighed missing = stove.model.unweighed(use("1 cup celeriac, grated")).orElseThrow();
        stove.model.weigh(missing, missing.measure("110 g"));
        assertThat(stove.model.words().find("celeriac").orElseThrow().preparation("grated"))
                .get()
                .satisfies(grated -> assertThat(grated.measures())
                        .containsExactly(new Equivalence(Quantity.of(1, Unit.CUP), Quantity.parse("110 g"))));
    }

    @Test
    void leavesWhatIsMadeAndWhatIsWeighedAlone() {
        stove.model.add("Celeriac purée", etamine.kitchen.recipe.Kind.COMPONENT);
        assertThat(stove.model.unweighed(use("1 ea celeriac purée"))).isEmpty();
        assertThat(stove.model.unweighed(use("120 g cream"))).isEmpty();
    }
}
