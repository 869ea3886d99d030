package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.recipes.Change;
import etamine.recipes.UseLines;
import java.util.ArrayList;
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
            STATION    | sauce             | sauce
            ABSORBS    | 400g              | 400 g
            REDUCES_TO | 25 %              | 0.25
            REDUCES_TO | 1/3               | 1/3
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
            Q_AMOUNT   | some  | such as 0.80
            ABSORBS    | 0 g   | how much water
            REDUCES_TO | 5     | 25 %
            """)
    void saysWhatToDoAboutWhatItCannotRead(Field field, String typed, String part) {
        assertThat(FieldText.read(field, typed))
                .isInstanceOfSatisfying(
                        Attempt.Bad.class, bad -> assertThat(bad.sentence()).contains(part));
    }

    @Test
    void keepsWhatBelongsToTheMenuPriceWithIt() {
        save(FieldText.read(Field.MENU_PRICE, "24"));
        save(FieldText.read(Field.TAX, "13.5 %"));
        save(FieldText.read(Field.Q_PERCENT, "2"));
        save(FieldText.read(Field.Q_AMOUNT, "0,80"));
        save(FieldText.read(Field.PACKAGING, "0.15"));
        save(FieldText.read(Field.TARGET, "28"));
        save(FieldText.read(Field.MENU_PRICE, "26.00"));

        assertThat(FieldText.of(now(), Field.TAX)).isEqualTo("13.5");
        assertThat(FieldText.of(now(), Field.Q_PERCENT)).isEqualTo("2");
        assertThat(FieldText.of(now(), Field.Q_AMOUNT)).isEqualTo("0.80");
        assertThat(FieldText.of(now(), Field.PACKAGING)).isEqualTo("0.15");
        assertThat(FieldText.of(now(), Field.TARGET)).isEqualTo("28");
        save(FieldText.read(Field.MENU_PRICE, ""));
        assertThat(now().menu()).isEmpty();
    }

    private void use(String... lines) {
        List<Use> uses = new ArrayList<>();
        for (String line : lines) {
            assertThat(stove.lines.read(line))
                    .isInstanceOfSatisfying(UseLines.Reading.Clear.class, clear -> uses.add(clear.use()));
        }
        save(new Attempt.Edit(recipe -> recipe.withUses(uses)));
    }

    @Test
    void showsLinesAsPurchased() {
        use("2 cup celeriac, peeled, large dice");

        // 2 x 156 g EP / 0.74 = 421.6 g as purchased
        assertThat(stove.model.asPurchased(now().uses().get(0))).isEqualTo("422 g");
    }

    @Test
    void saysWhereAProblemIsAndLinksToIt() {
        use("1 l cream");

        Checked checked = stove.model.check(now());

        assertThat(stove.model.asPurchased(now().uses().get(0))).isEqualTo("?");
        assertThat(checked.pointers()).contains("/uses/0/quantity");
        assertThat(checked.links()).contains("<a href=\"0\">Line 1</a>");
        assertThat(stove.model.isDoubtful("celeriac-puree")).isTrue();
        assertThat(stove.model.isDoubtful("nothing")).isFalse();
    }

    @Test
    void weighsInAgainstOutInASentence() {
        use("100 g cream", "2 cup celeriac, peeled, large dice");
        save(stove.model.tables().make(0, List.of("Celeriac purée", "380 g", "", "")));

        // bought 100 + 421.6, trimmed 109.6, in 412, out 380, so 32 g of 412 g or 7.8 % are lost
        assertThat(stove.model.check(now()).balance())
                .contains("Bought 522 g", "trimmed away 110 g", "32 g (7.8 %)", "comes out 380 g");
    }

    @Test
    void editsWhatItMakes() {
        save(stove.model.tables().make(0, List.of("Celeriac purée", "380 g", "", "")));
        save(stove.model.tables().make(1, List.of("Celeriac peel", "90 g", "1.00 / kg", "2.50 / kg")));

        assertThat(stove.model.tables().makes(now()))
                .containsExactly(
                        List.of("Celeriac purée", "380 g", "", ""),
                        List.of("Celeriac peel", "90 g", "1.00 / kg", "2.50 / kg"));
        assertThat(now().makes()).extracting(make -> make.item()).containsExactly("celeriac-puree", "celeriac-peel");
        assertThat(stove.model.tables().make(2, List.of("Skin", "", "", ""))).isInstanceOf(Attempt.Bad.class);
        assertThat(stove.model.tables().make(2, List.of("Skin", "1 g", "cheap", "")))
                .isInstanceOf(Attempt.Bad.class);
        assertThat(stove.model.tables().make(2, List.of("", "1 g", "", ""))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void editsStepsAndNamesEarlierOnesByNumber() {
        save(TableText.step(0, List.of("Peel.", "10", "", "", "", "", "", "")));
        save(TableText.step(1, List.of("Simmer.", "5 min", "1 h 30", "hob ring", "85 °C", "2 d", "1", "sauce")));

        assertThat(TableText.steps(now()))
                .containsExactly(
                        List.of("Peel.", "10", "", "", "", "", "", ""),
                        List.of("Simmer.", "5", "90", "hob ring", "85 °C", "2 d", "1", "sauce"));
        assertThat(now().steps().get(1).after()).containsExactly("1");
        assertThat(TableText.step(2, List.of("Wait.", "long", "", "", "", "", "", "")))
                .isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void completesToLinesThatAreClearAndLeavesAClearLineAlone() {
        assertThat(stove.model.complete("", "2 cup cel")).containsExactly("2 cup Celeriac", "2 cup Celeriac purée");
        assertThat(stove.model.complete("", "2 cup celeriac,")).containsExactly("2 cup Celeriac, peeled, large dice");
        assertThat(stove.model.complete("", "120 g cream")).isEmpty();
        assertThat(stove.model.complete("", "2 bunch samphire, cel"))
                .as("nothing that would leave a word not understood")
                .isEmpty();
    }

    @Test
    void neverOffersARecipeToItself() {
        assertThat(stove.model.complete("celeriac-puree", "2 cup cel")).containsExactly("2 cup Celeriac");
    }

    @Test
    void pairsADrinkByItsName() {
        stove.model.add("Perry, glass", Kind.DRINK);
        save(stove.model.tables().drink(0, List.of("perry, glass", "house")));

        assertThat(stove.model.tables().drinks(now())).containsExactly(List.of("Perry, glass", "house"));
        assertThat(stove.model.completeDrink("per")).containsExactly("Perry, glass");
        assertThat(stove.model.tables().drink(1, List.of("water", ""))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void refusesToRemoveTheLastThingMade() {
        Attempt emptied = stove.model.tables().make(0, List.of("", "", "", ""));

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
        use("100 g cream");
        assertThat(stove.book.history().undoable()).contains("Change lines of Celeriac purée");

        stove.book.history().undo();

        assertThat(now().uses()).isEmpty();
    }

    @Test
    void listsByKindThenName() {
        stove.model.add("Plate", Kind.PLATE);
        stove.model.add("Bouillon", Kind.COMPONENT);

        assertThat(stove.model.rows(RecipeFilter.NONE.wanted()))
                .extracting(RecipeRow::name)
                .containsExactly("Bouillon", "Celeriac purée", "Plate");
        assertThat(stove.model.rows(RecipeFilter.NONE.wanted()).get(2).icon()).isEqualTo("plate");
        assertThat(KindText.read("Breakdown")).isEqualTo(Kind.BREAKDOWN);
    }

    @Test
    void explainsTheRecipeWithAllergensAndUse() {
        use("2 cup celeriac, peeled, large dice", "100 g cream");
        stove.model.add("Plate", Kind.PLATE);
        Use puree = ((UseLines.Reading.Clear) stove.lines.read("70 g celeriac-puree")).use();
        stove.model.save("plate", plate -> plate.withUses(List.of(puree)));

        Explanation story = stove.story.recipe(now());

        assertThat(story.parts()).extracting(Explanation::title).containsExactly("Allergens", "Used in");
        assertThat(story.parts().get(0).value()).isEqualTo("rest unknown");
        assertThat(story.parts().get(0).source()).contains("local rules");
        assertThat(story.parts().get(1).parts()).extracting(Explanation::title).containsExactly("Plate");
    }

    @Test
    void explainsALineFromYieldAndMeasure() {
        use("2 cup celeriac, peeled, large dice");

        Explanation story = stove.story.line(now(), 0);

        assertThat(story.title()).isEqualTo("Celeriac, peeled, large dice");
        assertThat(story.value()).endsWith(" EP");
        assertThat(story.parts())
                .extracting(Explanation::title, Explanation::value)
                .contains(tuple("Yield", "74 %"), tuple("As purchased", "422 g"));
    }
}
