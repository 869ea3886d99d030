package etamine.diary.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Problem;
import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.today.DayMark;
import etamine.measures.Quantity;
import etamine.storage.Document;
import etamine.testing.SetKitchen;
import etamine.testing.VolatileBook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiaryFrontsTest {
    private static final LocalDate TUESDAY = LocalDate.of(2026, 11, 24);

    private final VolatileBook book = new VolatileBook();
    private final ShelfDiary diary = new ShelfDiary(book);
    private final SetKitchen kitchen = SetKitchen.at("2026-11-24T09:00:00Z");
    private final Verb covers = new CoversVerb(diary, kitchen);
    private final Verb sales = new SalesVerb(diary, kitchen);

    @Test
    void setsCoversFromTheConsoleAndListsThem() throws VerbException {
        Report set = run(covers, Map.of(), "2026-11-27", "52");
        assertThat(set.json()).hasToString("{covers=[{date=2026-11-27, covers=52}]}");

        Report list = run(covers, Map.of());
        assertThat(list.outcome()).isEqualTo(Outcome.DONE);
        assertThat(list.lines()).containsExactly("Day  Date        Covers", "Fri  2026-11-27      52");
    }

    @Test
    void listsOnlyTheDaysAskedFor() throws VerbException {
        diary.setCovers(Map.of(TUESDAY, OptionalInt.of(30), TUESDAY.plusDays(3), OptionalInt.of(52)));

        Report list = run(covers, Map.of("--from", "2026-11-25", "--days", "3"));

        assertThat(list.json()).hasToString("{covers=[{date=2026-11-27, covers=52}]}");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-11-27, many
            2026-11-27, -5
            tomorrow, 52
            """)
    void refusesACallItCannotRead(String date, String number) {
        assertThatThrownBy(() -> run(covers, Map.of(), date, number))
                .isInstanceOfSatisfying(
                        VerbException.class,
                        wrong -> assertThat(wrong.outcome()).isEqualTo(Outcome.WRONG_CALL));
        assertThat(diary.covers(TUESDAY, TUESDAY.plusDays(9))).isEmpty();
    }

    @Test
    void notesSalesFromTheConsoleAndListsThem() throws VerbException {
        run(sales, Map.of(), "2026-11-20", "plate-fowl", "11");

        assertThat(run(sales, Map.of()).json()).hasToString("{sales=[{date=2026-11-20, recipe=plate-fowl, sold=11}]}");
        assertThat(run(sales, Map.of("--to", "2026-11-19")).lines())
                .containsExactly("No sales are noted for these days.");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0, no covers
            1, 1 cover
            52, 52 covers
            """)
    void marksTheDayWithItsCovers(int number, String words) {
        diary.setCovers(Map.of(TUESDAY, OptionalInt.of(number)));

        List<DayMark> marks = new CoversMarks(diary).marks(TUESDAY, TUESDAY.plusDays(13));

        assertThat(marks).hasSize(1);
        assertThat(marks.get(0).text()).isEqualTo(words);
        assertThat(marks.get(0).kind()).isEqualTo(DayMark.Kind.COVERS);
    }

    @Test
    void findsUnknownItemsOnlyWhenThereIsAListOfItems() {
        diary.setUse(new WrittenUse(TUESDAY, "creme", Quantity.parse("3 l")));
        DiaryCheck check = new DiaryCheck(diary);
        assertThat(check.check()).isEmpty();

        check.items = new NoItems();
        assertThat(check.check()).extracting(Problem::where).containsExactly("use/2026-11-24/creme");
    }

    @Test
    void namesDocumentsThatCannotBeRead() {
        book.write("spoil", transaction -> transaction.save("covers", "2026-11-27", Document.ANY, "{\"covers\":52}"));

        assertThat(new DiaryCheck(diary).check()).extracting(Problem::code).containsExactly("unreadable");
        assertThat(book.shelf("covers").get("2026-11-27")).isPresent();
    }

    private static Report run(Verb verb, Map<String, String> options, String... arguments) throws VerbException {
        return verb.run(new VerbCall(List.of(arguments), options, "memory", Path.of(""), Progress.unseen()));
    }

    private static final class NoItems implements Items {
        @Override
        public Optional<Item> find(String id) {
            return Optional.empty();
        }

        @Override
        public Map<String, Item> all() {
            return Map.of();
        }
    }
}
