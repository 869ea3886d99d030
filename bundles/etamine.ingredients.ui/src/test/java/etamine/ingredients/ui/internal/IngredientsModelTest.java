package etamine.ingredients.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Explanation;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.internal.IngredientShelf;
import etamine.ingredients.internal.ShelvedIngredients;
import etamine.kitchen.item.Preparation;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.storage.BookException;
import etamine.testing.VolatileBook;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IngredientsModelTest {
    private final VolatileBook book = new VolatileBook();
    private final ShelvedIngredients list = new ShelvedIngredients(new IngredientShelf(book));
    private final IngredientsModel model = new IngredientsModel(list, Optional::empty);

    @BeforeEach
    void celeriac() {
        model.add("Celeriac");
    }

    private Ingredient now() {
        return list.find("celeriac").orElseThrow();
    }

    private void type(Field field, String text) {
        save(FieldText.read(field, text));
    }

    private void save(Attempt attempt) {
        assertThat(attempt).isInstanceOf(Attempt.Edit.class);
        assertThat(model.save("celeriac", ((Attempt.Edit) attempt).edit())).isInstanceOf(Change.Done.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NAME        | Celery root        | Celery root
            GROUP       | Vegetables         | Vegetables
            STORAGE     | chilled            | chilled
            KEEPS       | 10 days            | 10
            COUNT_IN    | lb                 | lb
            PRICE       | 2,10 / kg          | 2.10 / kg
            PRICE       | 1.20 per 500 g     | 1.20 / 500 g
            PRICE       | 3/2 kg             | 3 / 2 kg
            CONTAINS    | Celery,  mustard , | celery, mustard
            MAY_CONTAIN | Nuts               | nuts
            """)
    void savesEachFieldAndShowsItAgain(Field field, String typed, String shown) {
        type(field, typed);

        assertThat(FieldText.of(now(), field)).isEqualTo(shown);
        type(field, shown);
        assertThat(FieldText.of(now(), field)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NAME     | ''     | name
            KEEPS    | long   | days
            COUNT_IN | bunch  | Count it in
            PRICE    | cheap  | such as 2.10 / kg
            PRICE    | 2 / -1 kg | such as
            PRICE    | 2 / 0 kg | more than nothing
            """)
    void saysWhatToDoAboutWhatItCannotRead(Field field, String typed, String part) {
        assertThat(FieldText.read(field, typed))
                .isInstanceOfSatisfying(
                        Attempt.Bad.class, bad -> assertThat(bad.sentence()).contains(part));
    }

    @Test
    void takesAwayWhatIsEmptied() {
        type(Field.PRICE, "2.10 / kg");
        type(Field.KEEPS, "3");

        type(Field.PRICE, "");
        type(Field.KEEPS, " ");

        assertThat(now().item().writtenPrice()).isEmpty();
        assertThat(now().item().keeps()).isEmpty();
    }

    @Test
    void editsMeasuresRowByRow() {
        save(TableText.measure(0, List.of("1 ea", "750 g")));
        save(TableText.measure(1, List.of("1 cup", "150 g")));
        save(TableText.measure(0, List.of("1 ea", "800 g")));
        assertThat(TableText.measures(now().item()))
                .containsExactly(List.of("1 ea", "800 g"), List.of("1 cup", "150 g"));

        save(TableText.measure(0, List.of("", "")));

        assertThat(TableText.measures(now().item())).containsExactly(List.of("1 cup", "150 g"));
        assertThat(TableText.measure(1, List.of("1 cup", ""))).isInstanceOf(Attempt.Bad.class);
        assertThat(TableText.measure(1, List.of("1 cup", "0 g"))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void editsPreparationsWithYieldMeasuresAndNote() {
        List<String> diced = List.of("peeled, large dice", "74", "1 cup = 156 g; 1 ea = 555 g", "own test, 2026");
        save(TableText.preparation(0, diced));

        assertThat(TableText.preparations(now())).containsExactly(diced);
        assertThat(now().item().preparations().get(0).yield()).isEqualTo(Ratio.parse("0.74"));

        save(TableText.preparation(0, List.of("diced", "80 %", "", "")));
        assertThat(now().yields()).isEmpty();
        save(TableText.preparation(0, List.of("", "", "", "")));
        assertThat(now().item().preparations()).isEmpty();
        assertThat(TableText.preparation(0, List.of("x", "0", "", ""))).isInstanceOf(Attempt.Bad.class);
        assertThat(TableText.preparation(0, List.of("x", "80", "1 cup", ""))).isInstanceOf(Attempt.Bad.class);
        assertThat(TableText.preparation(0, List.of("", "80", "", ""))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void keepsAnExactYieldWhoseShownFormIsRounded() {
        model.save(
                "celeriac",
                ingredient -> ingredient.withPreparations(
                        List.of(new Preparation("trimmed", Ratio.of(46, 52), List.of())), java.util.Map.of()));
        assertThat(TableText.preparations(now()).get(0).get(1)).isEqualTo("88.4615");

        save(TableText.preparation(0, List.of("trimmed well", "88.4615", "", "")));

        assertThat(now().item().preparations().get(0).yield()).isEqualTo(Ratio.of(46, 52));
    }

    @Test
    void makesEachEditOneUndoableStep() {
        type(Field.GROUP, "Vegetables");
        type(Field.PRICE, "2.10 / kg");
        assertThat(book.history().undoable()).contains("Change price of Celeriac");

        book.history().undo();

        assertThat(now().item().group()).isEqualTo("Vegetables");
        assertThat(now().item().writtenPrice()).isEmpty();
    }

    @Test
    void keepsWhatSomebodyElseChangedInBetween() {
        boolean[] done = {false};
        model.save("celeriac", ingredient -> {
            if (!done[0]) {
                done[0] = true;
                list.save(ingredient.with(item -> item.withStorage("chilled")), list.revision("celeriac"));
            }
            return ingredient.with(item -> item.withGroup("Vegetables"));
        });

        assertThat(now().item().group()).isEqualTo("Vegetables");
        assertThat(now().item().storage()).isEqualTo("chilled");
    }

    @Test
    void saysThatAnIngredientIsGone() {
        model.remove("celeriac");

        assertThatThrownBy(() -> model.save("celeriac", same -> same)).isInstanceOf(BookException.class);
    }

    @Test
    void showsUnknownAllergensAsUnknown() {
        assertThat(model.rows().get(0).allergens()).isEqualTo("unknown");
        type(Field.CONTAINS, "celery");
        assertThat(model.rows().get(0).allergens()).isEqualTo("celery; rest unknown");
        model.save("celeriac", FieldText.known(true));
        assertThat(model.rows().get(0).allergens()).isEqualTo("celery");
        type(Field.CONTAINS, "");
        assertThat(model.rows().get(0).allergens()).isEqualTo("none listed");
    }

    @Test
    void listsByGroupThenName() {
        list.save(Ingredient.named("cream", "Cream", Unit.L).with(item -> item.withGroup("Dairy")), 0);
        list.save(Ingredient.named("butter", "Butter", Unit.KG).with(item -> item.withGroup("Dairy")), 0);

        assertThat(model.rows()).extracting(IngredientRow::name).containsExactly("Celeriac", "Butter", "Cream");
    }

    @Test
    void explainsYieldsAllergensAndUse() {
        save(TableText.preparation(0, List.of("peeled", "74", "", "own test")));

        Explanation story = model.explain("celeriac").orElseThrow();

        assertThat(story.title()).isEqualTo("Celeriac");
        assertThat(story.parts())
                .extracting(Explanation::title)
                .containsExactly("Yield, peeled", "Allergens", "Used in");
        assertThat(story.parts().get(0).value()).isEqualTo("74 %");
        assertThat(story.parts().get(1).value()).isEqualTo("unknown");
        assertThat(story.parts().get(1).source())
                .contains("Unknown is not absent")
                .contains("local rules");
        assertThat(story.parts().get(2).value()).isEqualTo("no recipe");
        assertThat(model.explain("nothing")).isEmpty();
    }
}
