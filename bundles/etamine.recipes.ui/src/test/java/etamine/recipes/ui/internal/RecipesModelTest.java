package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Ratio;
import etamine.recipes.Change;
import etamine.recipes.Scaled;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecipesModelTest {
    private final Stove stove = new Stove();

    @BeforeEach
    void puree() {
        stove.model.add("Celeriac purée", Kind.COMPONENT);
    }

    private Recipe now() {
        return stove.recipes.find("celeriac-puree").orElseThrow();
    }

    private void save(Attempt attempt) {
        assertThat(attempt).isInstanceOf(Attempt.Edit.class);
        assertThat(stove.model.save("celeriac-puree", ((Attempt.Edit) attempt).edit()))
                .isInstanceOf(Change.Done.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NAME       | Purée of celeriac | Purée of celeriac
            PORTION    | 70g               | 70 g
            KEEPS      | 3                 | 3
            TESTED     | 4                 | 4
            MENU_PRICE | 24,00             | 24.00
            NOTES      | Pass twice.       | Pass twice.
            """)
    void savesEachFieldAndShowsItAgain(Field field, String typed, String shown) {
        save(FieldText.read(field, typed));

        assertThat(FieldText.of(now(), field)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NAME       | ''    | name
            PORTION    | 0 g   | more than zero
            PORTION    | small | small
            KEEPS      | long  | days
            TESTED     | often | how often
            MENU_PRICE | dear  | such as 24.00
            TAX        | -3    | percentage
            """)
    void saysWhatToDoAboutWhatItCannotRead(Field field, String typed, String part) {
        assertThat(FieldText.read(field, typed))
                .isInstanceOfSatisfying(
                        Attempt.Bad.class, bad -> assertThat(bad.sentence()).contains(part));
    }

    @Test
    void keepsTaxAndQFactorWithTheMenuPrice() {
        save(FieldText.read(Field.MENU_PRICE, "24"));
        save(FieldText.read(Field.TAX, "13.5 %"));
        save(FieldText.read(Field.Q_FACTOR, "2"));
        save(FieldText.read(Field.MENU_PRICE, "26.00"));

        assertThat(FieldText.of(now(), Field.TAX)).isEqualTo("13.5");
        assertThat(FieldText.of(now(), Field.Q_FACTOR)).isEqualTo("2");
        save(FieldText.read(Field.MENU_PRICE, ""));
        assertThat(now().menu()).isEmpty();
    }

    @Test
    void readsLinesAndShowsThemAsPurchased() {
        save(stove.model.tables().use(0, List.of("2 cup celeriac, peeled, large dice")));
        save(stove.model.tables().use(1, List.of("100 g cream")));

        // 2 x 156 g EP / 0.74 = 421.6 g as purchased
        assertThat(stove.model.uses(now()))
                .containsExactly(
                        List.of("2 cup Celeriac, peeled, large dice", "422 g", ""),
                        List.of("100 g Cream", "100 g", ""));

        save(stove.model.tables().use(0, List.of("")));
        assertThat(now().uses()).hasSize(1);
        assertThat(stove.model.tables().use(1, List.of("2 cup celeriak"))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void showsAQuestionMarkForWhatCannotBeConverted() {
        save(stove.model.tables().use(0, List.of("1 l cream")));

        assertThat(stove.model.uses(now()).get(0).get(1)).isEqualTo("?");
        assertThat(stove.model.problems(now())).singleElement().asString().contains("Add what");
        assertThat(stove.model.isDoubtful("celeriac-puree")).isTrue();
        assertThat(stove.model.isDoubtful("nothing")).isFalse();
    }

    @Test
    void editsWhatItMakes() {
        save(stove.model.tables().make(0, List.of("Celeriac purée", "380 g", "")));
        save(stove.model.tables().make(1, List.of("Celeriac peel", "90 g", "1.00 / kg")));

        assertThat(stove.model.tables().makes(now()))
                .containsExactly(List.of("Celeriac purée", "380 g", ""), List.of("Celeriac peel", "90 g", "1.00 / kg"));
        assertThat(now().makes()).extracting(make -> make.item()).containsExactly("celeriac-puree", "celeriac-peel");
        assertThat(stove.model.tables().make(2, List.of("Skin", "", ""))).isInstanceOf(Attempt.Bad.class);
        assertThat(stove.model.tables().make(2, List.of("Skin", "1 g", "cheap")))
                .isInstanceOf(Attempt.Bad.class);
        assertThat(stove.model.tables().make(2, List.of("", "1 g", ""))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void editsStepsAndNamesEarlierOnesByNumber() {
        save(TableText.step(0, List.of("Peel.", "10", "", "", "")));
        save(TableText.step(1, List.of("Simmer.", "5 min", "25", "hob ring", "1")));

        assertThat(TableText.steps(now()))
                .containsExactly(List.of("Peel.", "10", "", "", ""), List.of("Simmer.", "5", "25", "hob ring", "1"));
        assertThat(now().steps().get(1).after()).containsExactly("1");
        assertThat(TableText.step(2, List.of("Wait.", "long", "", "", ""))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void refusesToRemoveTheLastThingMade() {
        Attempt emptied = stove.model.tables().make(0, List.of("", "", ""));

        assertThat(stove.model.save("celeriac-puree", ((Attempt.Edit) emptied).edit()))
                .isInstanceOfSatisfying(
                        Change.Refused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::code)
                                .containsExactly("makes-nothing"));
        assertThat(now().makes()).hasSize(1);
    }

    @Test
    void makesEachEditOneUndoableStep() {
        save(stove.model.tables().use(0, List.of("100 g cream")));
        assertThat(stove.book.history().undoable()).contains("Change lines of Celeriac purée");

        stove.book.history().undo();

        assertThat(now().uses()).isEmpty();
    }

    @Test
    void scalesToAnAmountOrToCovers() {
        save(stove.model.tables().use(0, List.of("100 g cream")));
        save(FieldText.read(Field.PORTION, "50 g"));

        assertThat(stove.model.scale("celeriac-puree", "2,5 kg")).isInstanceOfSatisfying(Scaled.Batch.class, batch -> {
            assertThat(batch.factor()).isEqualTo(Ratio.parse("2.5"));
            assertThat(stove.model.lines(batch.recipe()))
                    .extracting(ScaledLine::part, ScaledLine::quantity, ScaledLine::item)
                    .containsExactly(tuple("uses", "250 g", "Cream"), tuple("makes", "2.5 kg", "Celeriac purée"));
        });
        assertThat(stove.model.scale("celeriac-puree", "40 covers"))
                .isEqualTo(stove.model.scale("celeriac-puree", "2 kg"));
        assertThat(stove.model.scale("celeriac-puree", "40")).isEqualTo(stove.model.scale("celeriac-puree", "2 kg"));
        assertThat(stove.model.scale("celeriac-puree", "a lot")).isInstanceOf(Scaled.Impossible.class);
    }

    @Test
    void listsByKindThenName() {
        stove.model.add("Plate", Kind.PLATE);
        stove.model.add("Bouillon", Kind.COMPONENT);

        assertThat(stove.model.rows())
                .extracting(RecipeRow::name)
                .containsExactly("Bouillon", "Celeriac purée", "Plate");
        assertThat(stove.model.rows().get(2).kindText()).isEqualTo("Plate");
        assertThat(KindText.read("Breakdown")).isEqualTo(Kind.BREAKDOWN);
    }

    @Test
    void explainsTheRecipeWithAllergensAndUse() {
        save(stove.model.tables().use(0, List.of("2 cup celeriac, peeled, large dice")));
        save(stove.model.tables().use(1, List.of("100 g cream")));
        stove.model.add("Plate", Kind.PLATE);
        stove.model.save("plate", ((Attempt.Edit) stove.model.tables().use(0, List.of("70 g celeriac-puree"))).edit());

        Explanation story = stove.story.recipe(now());

        assertThat(story.parts()).extracting(Explanation::title).containsExactly("Allergens", "Used in");
        assertThat(story.parts().get(0).value()).isEqualTo("rest unknown");
        assertThat(story.parts().get(0).source()).contains("local rules");
        assertThat(story.parts().get(1).parts()).extracting(Explanation::title).containsExactly("Plate");
    }

    @Test
    void explainsALineFromYieldAndMeasure() {
        save(stove.model.tables().use(0, List.of("2 cup celeriac, peeled, large dice")));

        Explanation story = stove.story.line(now(), 0);

        assertThat(story.title()).isEqualTo("Celeriac, peeled, large dice");
        assertThat(story.value()).endsWith(" EP");
        assertThat(story.parts())
                .extracting(Explanation::title, Explanation::value)
                .contains(tuple("Yield", "74 %"), tuple("As purchased", "422 g"));
    }
}
