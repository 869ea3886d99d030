package etamine.diary.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.storage.Document;
import etamine.testing.VolatileBook;
import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ShelfDiaryTest {
    private static final LocalDate FRIDAY = LocalDate.of(2026, 11, 27);

    private final VolatileBook book = new VolatileBook();
    private final ShelfDiary diary = new ShelfDiary(book);

    @Test
    void givesCoversOfTheDaysAskedForBothEndsIncluded() {
        diary.setCovers(Map.of(
                FRIDAY.minusDays(1),
                OptionalInt.of(40),
                FRIDAY,
                OptionalInt.of(52),
                FRIDAY.plusDays(1),
                OptionalInt.of(0),
                FRIDAY.plusDays(2),
                OptionalInt.of(60)));

        assertThat(diary.covers(FRIDAY, FRIDAY.plusDays(1)))
                .containsExactly(Map.entry(FRIDAY, 52), Map.entry(FRIDAY.plusDays(1), 0));
    }

    @Test
    void takesADayOutAgain() {
        diary.setCovers(Map.of(FRIDAY, OptionalInt.of(52)));
        diary.setCovers(Map.of(FRIDAY, OptionalInt.empty(), FRIDAY.plusDays(1), OptionalInt.empty()));

        assertThat(diary.covers(FRIDAY, FRIDAY)).isEmpty();
    }

    @Test
    void changesSeveralDaysInOneStepThatCanBeUndone() {
        diary.setCovers(Map.of(FRIDAY, OptionalInt.of(52), FRIDAY.plusDays(1), OptionalInt.of(58)));

        assertThat(book.history().undo()).contains("Covers of several days");

        assertThat(diary.covers(FRIDAY, FRIDAY.plusDays(7))).isEmpty();
    }

    @Test
    void refusesNegativeNumbersAndChangesNothing() {
        assertThatThrownBy(() -> diary.setCovers(Map.of(FRIDAY, OptionalInt.of(-1))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> diary.setSold(FRIDAY, "plate-fowl", -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> diary.setMix("plate-fowl", Ratio.of(-1, 2)))
                .isInstanceOf(IllegalArgumentException.class);

        assertThat(book.revision()).isEqualTo(new VolatileBook().revision() + ledgerMade());
    }

    private static long ledgerMade() {
        VolatileBook fresh = new VolatileBook();
        long before = fresh.revision();
        new ShelfDiary(fresh).close();
        return fresh.revision() - before;
    }

    @Test
    void correctsWhatWasSoldToTheNumberGiven() {
        diary.setSold(FRIDAY, "plate-fowl", 11);
        diary.setSold(FRIDAY, "plate-fowl", 9);
        diary.setSold(FRIDAY, "plate-cod", 4);

        assertThat(diary.sales(FRIDAY, FRIDAY))
                .containsExactly(new Sale(FRIDAY, "plate-cod", 4), new Sale(FRIDAY, "plate-fowl", 9));
    }

    @Test
    void undoesACorrectionOfSales() {
        diary.setSold(FRIDAY, "plate-fowl", 11);
        diary.setSold(FRIDAY, "plate-fowl", 9);

        book.history().undo();

        assertThat(diary.sales(FRIDAY, FRIDAY)).containsExactly(new Sale(FRIDAY, "plate-fowl", 11));
    }

    @Test
    void keepsMembersItDoesNotKnowWhenADocumentIsEdited() {
        book.write(
                "an entry of a newer program",
                transaction -> transaction.save(
                        "mix",
                        "plate-fowl",
                        Document.ANY,
                        "{\"recipe\":\"plate-fowl\",\"perCover\":\"0.22\",\"season\":\"winter\"}"));

        diary.setMix("plate-fowl", Ratio.of(1, 3));

        assertThat(book.shelf("mix").get("plate-fowl").orElseThrow().json())
                .isEqualTo("{\"recipe\":\"plate-fowl\",\"perCover\":\"1/3\",\"season\":\"winter\"}");
        assertThat(diary.mix()).containsExactly(Map.entry("plate-fowl", Ratio.of(1, 3)));
    }

    @Test
    void statesUseAndTakesItBack() {
        WrittenUse cream = new WrittenUse(FRIDAY, "cream", Quantity.parse("3 l"));
        diary.setUse(cream);
        assertThat(diary.writtenUse(FRIDAY, FRIDAY)).containsExactly(cream);

        diary.removeUse(FRIDAY, "cream");
        assertThat(diary.writtenUse(FRIDAY, FRIDAY)).isEmpty();
    }

    @Test
    void takesARecipeOffTheMix() {
        diary.setMix("plate-fowl", Ratio.parse("0.22"));
        diary.removeMix("plate-fowl");
        diary.removeMix("plate-fowl");

        assertThat(diary.mix()).isEmpty();
    }
}
