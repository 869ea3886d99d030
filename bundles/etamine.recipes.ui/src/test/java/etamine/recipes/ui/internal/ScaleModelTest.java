package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.Scaled;
import etamine.recipes.UseLines;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleModelTest {
    private final Stove stove = new Stove();
    private final ScaleModel model = new ScaleModel(stove.ware, stove.model);

    /** A kilogram from 103 g of cream, in portions of 50 g. */
    @BeforeEach
    void puree() {
        stove.model.add("Celeriac purée", Kind.COMPONENT);
        Use cream = ((UseLines.Reading.Clear) stove.lines.read("103 g cream")).use();
        stove.model.save(
                "celeriac-puree",
                recipe -> recipe.withUses(List.of(cream)).withPortion(Optional.of(Quantity.parse("50 g"))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            PORTIONS | 52           | 2.6
            PORTIONS | 40 covers    | 2
            AMOUNT   | 2,5 kg       | 2.5
            ON_HAND  | 51.5 g cream | 0.5
            """)
    void scalesByEveryWish(ScaleWish wish, String typed, String factor) {
        assertThat(model.scale("celeriac-puree", wish, typed))
                .isInstanceOfSatisfying(
                        Scaled.Batch.class, batch -> assertThat(batch.factor()).isEqualTo(Ratio.parse(factor)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            PORTIONS | many          | how many portions
            AMOUNT   | a lot         | lot
            VESSELS  | twelve moulds | such as
            ON_HAND  | ;             | what there is
            ON_HAND  | 5 g creem     |
            """)
    void saysWhatToDoAboutWhatItCannotRead(ScaleWish wish, String typed, String part) {
        assertThat(model.scale("celeriac-puree", wish, typed))
                .isInstanceOfSatisfying(
                        Scaled.Impossible.class,
                        impossible -> assertThat(impossible.text()).contains(part == null ? "" : part));
    }

    @Test
    void laysTheExactAmountBesideWhatACookMeasures() {
        Scaled.Batch batch = (Scaled.Batch) model.scale("celeriac-puree", ScaleWish.AMOUNT, "2.5 kg");

        // 103 g x 2.5 = 257.5 g; scales of a kitchen show 260 g, 0.97 % more
        assertThat(model.lines(batch))
                .extracting(
                        ScaledLine::part, ScaledLine::exact, ScaledLine::measured, ScaledLine::off, ScaledLine::item)
                .containsExactly(
                        tuple("uses", "257.5 g", "260 g", "+1 %", "Cream"),
                        tuple("makes", "2.5 kg", "2.5 kg", "", "Celeriac purée"));
        assertThat(ScaleModel.said(batch)).startsWith("Times 2.5; 3 whole batches would be enough.");
    }

    @Test
    void namesWhatTheRecipeUsesForWhatThereIs() {
        assertThat(model.used(stove.recipes.find("celeriac-puree").orElseThrow()))
                .containsExactly("Cream");
    }
}
