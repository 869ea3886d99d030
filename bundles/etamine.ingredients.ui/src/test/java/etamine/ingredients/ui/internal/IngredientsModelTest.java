package etamine.ingredients.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Explanation;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.kitchen.item.Item;
import etamine.measures.Unit;
import etamine.storage.BookException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IngredientsModelTest extends CeleriacKitchen {
    private void type(Field field, String text) {
        save(FieldText.read(field, text));
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
            NOTE        | From the north field | From the north field
            SULPHITES   | 12,5               | 12.5
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
            SULPHITES | a lot | mg/kg
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
    void showsMadeItemsBesideTheListAndFiltersThem() {
        Item stock = Ingredient.named("stock", "Stock", Unit.L).item();
        items.addSource(() -> Map.of("stock", stock));

        assertThat(model.rows()).extracting(IngredientRow::name).containsExactly("Celeriac", "Stock");
        assertThat(RowFilter.MADE.of(model.rows()))
                .extracting(IngredientRow::group)
                .containsExactly("Made here");
        assertThat(RowFilter.LISTED.of(model.rows()))
                .extracting(IngredientRow::id)
                .containsExactly("celeriac");
        assertThat(RowFilter.ALLERGENS.of(model.rows())).hasSize(2);
        type(Field.PRICE, "2 / kg");
        assertThat(RowFilter.UNPRICED.of(model.rows())).isEmpty();
        assertThat(RowFilter.UNUSED.of(model.rows())).hasSize(2);
        assertThat(model.find("stock")).isEmpty();
        assertThat(model.maker("stock")).isEmpty();
    }

    @Test
    void startsWithCommonIngredients() {
        int missing = model.startersMissing();
        assertThat(model.addStarters()).isEqualTo(missing).isEqualTo(119);
        assertThat(model.startersMissing()).isZero();
        book.history().undo();
        assertThat(model.rows()).hasSize(1);
    }

    @Test
    void tellsWhatAMergeRewritesAndMerges() {
        model.add("Celeriacs");
        model.add("Milk");
        list.save(list.find("milk").orElseThrow().with(item -> item.withCountIn(Unit.L)), list.revision("milk"));
        MergeModel merges = new MergeModel(known);

        assertThat(merges.pairs())
                .singleElement()
                .satisfies(pair -> assertThat(pair.why()).isEqualTo("the same words"));
        assertThat(merges.choices()).extracting(choice -> choice.label()).contains("Celeriacs (celeriacs)");
        assertThat(merges.tell("celeriacs", "celeriac").text()).contains("Nothing else names it");
        assertThat(merges.tell("milk", "celeriac").possible()).isFalse();
        assertThat(merges.tell("milk", "celeriac").text()).contains("what 1 l weighs");
        assertThat(merges.merge("celeriacs", "celeriac")).isInstanceOf(Change.Done.class);
        assertThat(model.rows()).hasSize(2);
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
