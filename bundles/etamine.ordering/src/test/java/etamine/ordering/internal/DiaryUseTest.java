package etamine.ordering.internal;

import static etamine.ordering.internal.SetKitchenware.item;
import static etamine.ordering.internal.SetKitchenware.recipe;
import static etamine.ordering.internal.SetKitchenware.use;
import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.use.ExpectedUse.DayUse;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.ordering.internal.SetKitchenware.SetDiary;
import etamine.ordering.internal.SetKitchenware.SetItems;
import etamine.ordering.internal.SetKitchenware.SetRecipes;
import etamine.ordering.internal.SetKitchenware.SetStock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DiaryUseTest {
    private static final LocalDate FRIDAY = LocalDate.of(2026, 11, 27);

    private final SetDiary diary = new SetDiary();
    private final Neighbours neighbours = new Neighbours();
    private final DiaryUse use = new DiaryUse(neighbours);

    DiaryUseTest() {
        neighbours.diary = diary;
        neighbours.items = new SetItems(item("cream", Unit.L), item("celeriac", Unit.KG), item("puree", Unit.G));
        neighbours.recipes = new SetRecipes(
                recipe("plate", "1 portion", use("puree", "70 g"), use("cream", "10 ml")),
                recipe("puree", "350 g", use("celeriac", "500 g"), use("cream", "100 ml")));
    }

    @Test
    void followsCoversTimesMixThroughTheRecipes() {
        diary.covers.put(FRIDAY, 50);
        diary.mix.put("plate", Ratio.parse("0.2"));

        // 10 plates: 700 g of puree = 2 batches: 1 kg of celeriac, 200 ml of cream; and 100 ml of cream on the plate.
        assertThat(between(FRIDAY, FRIDAY))
                .containsExactly("2026-11-27 celeriac 1000 g covers", "2026-11-27 cream 300 ml covers");
        assertThat(use.between(FRIDAY, FRIDAY).get(1).parts())
                .isEqualTo(Map.of("plate", Quantity.parse("100 ml"), "puree", Quantity.parse("200 ml")));
    }

    @Test
    void takesMadeComponentsOnHandOnceOverTheDays() {
        diary.covers.put(FRIDAY, 50);
        diary.covers.put(FRIDAY.plusDays(1), 50);
        diary.mix.put("plate", Ratio.parse("0.2"));
        neighbours.stock = new SetStock().lot("puree", "1050 g", "2026-12-03");

        // 1,050 g are there: all of Friday's 700 g and half of Saturday's, whose other half is one batch.
        assertThat(between(FRIDAY, FRIDAY.plusDays(1)))
                .containsExactly(
                        "2026-11-27 cream 100 ml covers",
                        "2026-11-28 celeriac 500 g covers",
                        "2026-11-28 cream 200 ml covers");
    }

    @Test
    void doesNotTakeMadeComponentsPastTheirLastDay() {
        diary.covers.put(FRIDAY, 50);
        diary.mix.put("plate", Ratio.parse("0.2"));
        neighbours.stock = new SetStock().lot("puree", "5 kg", "2026-11-26");

        assertThat(between(FRIDAY, FRIDAY)).contains("2026-11-27 celeriac 1000 g covers");
    }

    @Test
    void letsWrittenUseWinForItsItemAndDay() {
        diary.covers.put(FRIDAY, 50);
        diary.covers.put(FRIDAY.plusDays(1), 50);
        diary.mix.put("plate", Ratio.parse("0.2"));
        diary.written.add(new WrittenUse(FRIDAY, "cream", Quantity.parse("3 l")));

        assertThat(between(FRIDAY, FRIDAY.plusDays(1)))
                .containsExactly(
                        "2026-11-27 celeriac 1000 g covers", "2026-11-27 cream 3 l written",
                        "2026-11-28 celeriac 1000 g covers", "2026-11-28 cream 300 ml covers");
    }

    @Test
    void followsWrittenUseOfSomethingMadeInPlaceOfWhatThePlatesTake() {
        diary.covers.put(FRIDAY, 50);
        diary.mix.put("plate", Ratio.parse("0.2"));
        diary.written.add(new WrittenUse(FRIDAY, "puree", Quantity.parse("350 g")));

        // One batch of puree instead of two; the plates' own cream stays.
        assertThat(between(FRIDAY, FRIDAY))
                .containsExactly(
                        "2026-11-27 celeriac 500 g covers",
                        "2026-11-27 cream 200 ml covers",
                        "2026-11-27 puree 350 g written");
    }

    @Test
    void takesTheMeanOfTheWeekdayWhereNoCoversAreEntered() {
        diary.sales.add(new Sale(FRIDAY.minusWeeks(1), "plate", 12));
        diary.sales.add(new Sale(FRIDAY.minusWeeks(2), "plate", 8));
        diary.sales.add(new Sale(FRIDAY.minusDays(1), "plate", 99));
        diary.sales.add(new Sale(FRIDAY.minusWeeks(9), "plate", 500));

        assertThat(between(FRIDAY, FRIDAY))
                .containsExactly("2026-11-27 celeriac 1000 g history", "2026-11-27 cream 300 ml history");
    }

    @Test
    void expectsNothingOnADayEnteredWithoutCovers() {
        diary.covers.put(FRIDAY, 0);
        diary.mix.put("plate", Ratio.parse("0.2"));
        diary.sales.add(new Sale(FRIDAY.minusWeeks(1), "plate", 12));

        assertThat(between(FRIDAY, FRIDAY)).isEmpty();
    }

    @Test
    void knowsOnlyWhatIsWrittenWithoutRecipesAndNothingWithoutADiary() {
        diary.covers.put(FRIDAY, 50);
        diary.mix.put("plate", Ratio.parse("0.2"));
        diary.written.add(new WrittenUse(FRIDAY, "cream", Quantity.parse("3 l")));
        neighbours.recipes = null;
        assertThat(between(FRIDAY, FRIDAY)).containsExactly("2026-11-27 cream 3 l written");

        neighbours.diary = null;
        assertThat(between(FRIDAY, FRIDAY)).isEmpty();
    }

    @Test
    void saysWhichWrittenUseCannotBeCounted() {
        diary.written.add(new WrittenUse(FRIDAY, "cream", Quantity.parse("3 ea")));

        UseForecast forecast = use.forecast(FRIDAY, FRIDAY);

        assertThat(forecast.uses()).isEmpty();
        assertThat(forecast.problems()).hasSize(1);
        assertThat(forecast.problems().get(0).code()).isEqualTo("missing-equivalence");
    }

    private List<String> between(LocalDate from, LocalDate to) {
        return use.between(from, to).stream().map(DiaryUseTest::words).toList();
    }

    private static String words(DayUse day) {
        return day.date() + " " + day.item() + " " + day.quantity() + " " + day.source();
    }
}
