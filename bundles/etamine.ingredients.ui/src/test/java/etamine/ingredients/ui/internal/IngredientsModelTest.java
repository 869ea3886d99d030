package etamine.ingredients.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Explanation;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.internal.IngredientShelf;
import etamine.ingredients.internal.MergedItems;
import etamine.ingredients.internal.ResourceStarters;
import etamine.ingredients.internal.ShelvedIngredients;
import etamine.ingredients.internal.WholeBookMerges;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.storage.BookException;
import etamine.testing.SetKitchen;
import etamine.testing.VolatileBook;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IngredientsModelTest {
    private final VolatileBook book = new VolatileBook();
    private final IngredientShelf shelf = new IngredientShelf(book);
    private final ShelvedIngredients list = new ShelvedIngredients(shelf);
    private final MergedItems items = new MergedItems(shelf);
    private final Known known = new Known(
            list,
            items,
            new WholeBookMerges(shelf, list),
            new ResourceStarters(shelf),
            SetKitchen.at("2026-11-24T09:00:00Z"),
            Known.Others.NONE);
    private final IngredientsModel model = new IngredientsModel(known);

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

    private void allergen(String word, String state, String name) {
        List<List<String>> rows = AllergenText.rows(now().item().allergens());
        int row = 0;
        while (row < rows.size() && !rows.get(row).get(0).equals(word)) {
            row++;
        }
        save(AllergenText.row(now().item().allergens(), row, List.of(word, state, name)));
    }

    @Test
    void showsUnknownAllergensAsUnknown() {
        assertThat(model.rows().get(0).allergens()).isEqualTo("unknown");
        allergen("celery", "contains", "");
        assertThat(model.rows().get(0).allergens()).isEqualTo("celery; rest unknown");
        model.save("celeriac", AllergenText.known(true));
        assertThat(model.rows().get(0).allergens()).isEqualTo("celery");
        allergen("celery", "", "");
        assertThat(model.rows().get(0).allergens()).isEqualTo("none listed");
    }

    @Test
    void showsEveryUsualAllergenInThreeStatesAndUnderTheKitchensOwnWord() {
        allergen("soya", "contains", "");
        allergen("fish", "may", "hake");
        allergen("lupini", "may contain", "");
        List<List<String>> rows = AllergenText.rows(now().item().allergens());

        assertThat(rows).hasSize(15);
        assertThat(rows)
                .contains(
                        List.of("soya", "contains", ""),
                        List.of("fish", "may contain", "hake"),
                        List.of("lupini", "may contain", ""),
                        List.of("milk", "unknown", ""))
                .doesNotContain(List.of("soy", "unknown", ""));
        model.save("celeriac", AllergenText.known(true));
        assertThat(AllergenText.rows(now().item().allergens())).contains(List.of("milk", "no", ""));
    }

    @Test
    void saysThatNothingIsAbsentBeforeBothListsAreEstablished() {
        assertThat(AllergenText.row(now().item().allergens(), 0, List.of("gluten", "no", "")))
                .isInstanceOfSatisfying(
                        Attempt.Bad.class, bad -> assertThat(bad.sentence()).contains("all is written here"));
        assertThat(AllergenText.row(now().item().allergens(), 0, List.of("gluten", "perhaps", "")))
                .isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void readsWaysOfEatingInThreeStates() {
        assertThat(DietText.rows(now().item().diet()))
                .containsExactly(List.of("vegetarian", "unknown"), List.of("vegan", "unknown"));
        save(DietText.row(now().item().diet(), 0, List.of("vegetarian", "suits")));
        save(DietText.row(now().item().diet(), 1, List.of("vegan", "does not")));
        save(DietText.row(now().item().diet(), 2, List.of("Halal", "suits")));

        assertThat(DietText.rows(now().item().diet()))
                .containsExactly(
                        List.of("vegetarian", "suits"), List.of("vegan", "does not"), List.of("halal", "suits"));
        save(DietText.row(now().item().diet(), 2, List.of("", "")));
        assertThat(DietText.rows(now().item().diet())).hasSize(2);
    }

    private void test(int row, String... cells) {
        save(TestText.row(now(), row, List.of(cells), known.kitchen().today()));
    }

    @Test
    void recordsTestsReadsThemTogetherAndWorksWithTheirMean() {
        save(TableText.preparation(0, List.of("peeled", "70", "", "")));
        test(0, "peeled", "2026-11-20", "trim", "1 kg", "740 g", "Ana", "small roots");
        test(1, "peeled", "", "", "2 kg", "1.52 kg", "", "");
        assertThat(TestText.rows(now()))
                .containsExactly(
                        List.of("peeled", "2026-11-20", "trim", "1 kg", "740 g", "74 %", "Ana", "small roots"),
                        List.of("peeled", "2026-11-24", "trim", "2 kg", "1.52 kg", "76 %", "", ""));
        assertThat(SpreadText.rows(now()))
                .extracting(row -> row.what() + " " + row.yield() + " " + row.spread())
                .containsExactly("working yield 70 % ", "trim 75 % ± 1.4142, 74 to 76 %");

        model.save("celeriac", now -> now.accepting("peeled", List.of(0, 1), model.today(), "Ben"));

        assertThat(TableText.preparations(now()).get(0).get(1)).isEqualTo("75");
        assertThat(TestText.rows(now()).get(0).get(5)).isEqualTo("74 %, accepted");
        assertThat(SpreadText.rows(now()))
                .last()
                .satisfies(row -> assertThat(row.what()).isEqualTo("accepted 2026-11-24 by Ben"));
        test(0, "", "", "", "", "", "", "");
        assertThat(TestText.rows(now())).hasSize(1);
    }

    @Test
    void saysWhatToDoAboutATestItCannotRead() {
        save(TableText.preparation(0, List.of("peeled", "70", "", "")));

        assertThat(bad("chopped", "", "", "1 kg", "800 g")).contains("peeled");
        assertThat(bad("peeled", "yesterday", "", "1 kg", "800 g")).contains("2026-11-24");
        assertThat(bad("peeled", "", "boil", "1 kg", "800 g")).contains("trim or cooking");
        assertThat(bad("peeled", "", "", "1 kg", "1 cup")).contains("1 kg and 800 g");
        assertThat(bad("peeled", "", "", "1 kg", "")).contains("what came out");
    }

    private String bad(String... cells) {
        List<String> row = new java.util.ArrayList<>(List.of(cells));
        row.addAll(List.of("", ""));
        Attempt attempt = TestText.row(now(), 0, row, known.kitchen().today());
        assertThat(attempt).isInstanceOf(Attempt.Bad.class);
        return ((Attempt.Bad) attempt).sentence();
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
