package etamine.diary.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Explanation;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.use.ExpectedUse;
import etamine.kitchen.use.ExpectedUse.DayUse;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.testing.SetKitchen;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiaryModelTest {
    private static final LocalDate FRIDAY = LocalDate.of(2026, 11, 27);

    private final SetDiary diary = new SetDiary();
    private Optional<Items> items = Optional.empty();
    private Optional<ExpectedUse> expected = Optional.empty();
    private final KitchenNames names = new KitchenNames(Optional::empty, () -> items, () -> expected);
    private final DiaryModel model = new DiaryModel(diary, SetKitchen.at("2026-11-24T09:00:00Z"), names);

    @Test
    void showsTwoWeeksFromMondayWithCoversAndWhatWasSold() {
        diary.covers.put(FRIDAY, 52);
        diary.sales.add(new Sale(LocalDate.of(2026, 11, 23), "plate-fowl", 11));
        diary.sales.add(new Sale(LocalDate.of(2026, 11, 23), "plate-cod", 4));

        List<DayCell> days = model.fortnight(FRIDAY);

        assertThat(days).hasSize(14);
        assertThat(days.get(0).heading()).isEqualTo("Mon 23 Nov");
        assertThat(days.get(0).note()).isEqualTo("15 sold");
        assertThat(days.get(1).today()).isTrue();
        assertThat(days.get(4).covers()).contains(52);
        assertThat(days.get(13).date()).isEqualTo(LocalDate.of(2026, 12, 6));
    }

    @Test
    void setsAndClearsCovers() {
        model.saveCovers(FRIDAY, OptionalInt.of(40));
        assertThat(diary.covers).containsEntry(FRIDAY, 40);

        model.saveCovers(FRIDAY, OptionalInt.empty());
        assertThat(diary.covers).isEmpty();
    }

    @Test
    void addsChangesAndRemovesRowsOfTheMix() {
        save(model.editMix(0, List.of("plate-fowl", "0,22")));
        assertThat(diary.mix).containsEntry("plate-fowl", Ratio.parse("0.22"));
        assertThat(model.mix()).containsExactly(List.of("plate-fowl", "0.22"));

        save(model.editMix(0, List.of("plate-fowl", "1/3")));
        assertThat(diary.mix).containsEntry("plate-fowl", Ratio.of(1, 3));

        save(model.editMix(0, List.of("", "")));
        assertThat(diary.mix).isEmpty();
    }

    @Test
    void addsChangesAndRemovesSales() {
        save(model.editSold(FRIDAY, 0, List.of("plate-fowl", "11")));
        save(model.editSold(FRIDAY, 0, List.of("plate-fowl", "9")));
        assertThat(model.sold(FRIDAY)).containsExactly(List.of("plate-fowl", "9"));

        save(model.editSold(FRIDAY, 0, List.of("", "")));
        assertThat(model.sold(FRIDAY)).isEmpty();
    }

    @Test
    void understandsItemsByNameAndQuantitiesAsPeopleWriteThem() {
        items = Optional.of(new OneItem());

        save(model.editStated(FRIDAY, 0, List.of("double cream", "1 1/2 l")));

        assertThat(diary.written).containsExactly(new WrittenUse(FRIDAY, "cream", Quantity.parse("3/2 l")));
        assertThat(model.stated(FRIDAY).get(0).get(0)).isEqualTo("Double cream");
        assertThat(names.completeItem("CRE")).containsExactly("Double cream");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            mix    | plate-fowl | much  | Write how many portions
            mix    | plate-fowl | -1    | Write how many portions
            mix    | plate-cod  | 0.2   | Empty this row to remove it
            sold   | plate-fowl | 1.5   | whole number
            stated | milk       | 3 l   | There is no ingredient
            stated | cream      | 3     | Add a unit
            stated | cream      | -3 l  | less than zero
            """)
    void saysWhatIsWrongWithARow(String grid, String name, String number, String sentence) {
        items = Optional.of(new OneItem());
        diary.mix.put("plate-fowl", Ratio.parse("0.22"));
        List<String> cells = List.of(name, number);
        Attempt attempt = switch (grid) {
            case "mix" -> model.editMix(0, cells);
            case "sold" -> model.editSold(FRIDAY, 0, cells);
            default -> model.editStated(FRIDAY, 0, cells);
        };

        assertThat(attempt)
                .isInstanceOfSatisfying(
                        Attempt.Refused.class,
                        refused -> assertThat(refused.sentence()).contains(sentence));
    }

    @Test
    void explainsADayByWhatIsExpectedOfIt() {
        diary.covers.put(FRIDAY, 52);
        expected = Optional.of((from, to) -> List.of(new DayUse(
                FRIDAY, "cream", Quantity.parse("1.5 l"), "covers", Map.of("plate-fowl", Quantity.parse("1.5 l")))));

        Explanation explanation = model.explain(FRIDAY);

        assertThat(explanation.title()).isEqualTo("Friday 27 November");
        assertThat(explanation.parts().get(0).value()).isEqualTo("52");
        Explanation cream = explanation.parts().get(1).parts().get(0);
        assertThat(cream.value()).isEqualTo("1.5 l");
        assertThat(cream.source()).isEqualTo("covers times menu mix");
        assertThat(cream.parts()).extracting(Explanation::title).containsExactly("plate-fowl");
    }

    private static void save(Attempt attempt) {
        assertThat(attempt).isInstanceOf(Attempt.Save.class);
        ((Attempt.Save) attempt).work().run();
    }

    private static final class OneItem implements Items {
        private static final Item CREAM = new Item(
                "cream",
                "Double cream",
                "",
                false,
                "",
                Optional.empty(),
                Unit.L,
                List.of(),
                List.of(),
                Allergens.unknown(),
                Optional.empty());

        @Override
        public Optional<Item> find(String id) {
            return Optional.ofNullable(all().get(id));
        }

        @Override
        public Map<String, Item> all() {
            return Map.of("cream", CREAM);
        }
    }
}
