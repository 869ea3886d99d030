package etamine.storage.sql.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.storage.BookException.Reason;
import etamine.storage.Ledger;
import etamine.storage.Ledger.Sum;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.Selection;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every book promises about ledgers, on top of {@link TransactionContract}. */
abstract class LedgerContract extends TransactionContract {
    static final LedgerForm MOVEMENTS =
            new LedgerForm("movements", List.of("item", "place"), List.of("quantity", "value"));

    @BeforeEach
    void declaresALedger() {
        book.prepare(new ModuleFormat("inventory", 1, List.of(MOVEMENTS), List.of()));
    }

    static LedgerEntry movement(String id, String at, String item, String place, long quantity) {
        return LedgerEntry.of(
                id,
                Instant.parse(at),
                Map.of("item", item, "place", place),
                Map.of("quantity", quantity, "value", quantity * 2),
                "{\"kind\":\"received\"}");
    }

    void append(LedgerEntry... entries) {
        book.write("Receive", transaction -> {
            for (LedgerEntry entry : entries) {
                transaction.append("movements", entry);
            }
            return null;
        });
    }

    void reverse(String id) {
        book.write("Correct", transaction -> {
            transaction.reverse("movements", id, "wrong \"crate\"");
            return null;
        });
    }

    Ledger movements() {
        return book.ledger("movements");
    }

    @Test
    void givesBackEntriesInOrderOfTimeThenOfWriting() {
        LedgerEntry late = movement("a", "2026-11-24T10:00:00.123456789Z", "cream", "walk-in", 3);
        LedgerEntry early = movement("b", "2026-11-24T08:00:00Z", "cream", "walk-in", 4);
        LedgerEntry same = movement("c", "2026-11-24T08:00:00Z", "salt", "", -1);
        append(late, early);
        append(same);
        assertThat(movements().entries(Selection.all())).containsExactly(early, same, late);
        assertThat(movements().entry("a")).contains(late);
        assertThat(movements().entry("z")).isEmpty();
        assertThat(movements().form()).isEqualTo(MOVEMENTS);
    }

    @Test
    void selectsByKeysAndTimes() {
        LedgerEntry first = movement("a", "2026-11-24T08:00:00Z", "cream", "walk-in", 3);
        LedgerEntry second = movement("b", "2026-11-24T09:00:00Z", "cream", "bar", 4);
        LedgerEntry third = movement("c", "2026-11-24T10:00:00Z", "salt", "bar", 5);
        append(first, second, third);
        Selection bar = Selection.all().where("place", "bar");
        assertThat(movements().entries(bar)).containsExactly(second, third);
        assertThat(movements().entries(bar.where("item", "salt"))).containsExactly(third);
        assertThat(movements().entries(Selection.all().since(second.at()))).containsExactly(second, third);
        assertThat(movements().entries(Selection.all().before(second.at()))).containsExactly(first);
        assertThat(movements().entries(Selection.all().since(Instant.MIN).before(Instant.MAX)))
                .hasSize(3);
        assertThatThrownBy(() -> movements().entries(Selection.all().where("colour", "red")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void sumsByKeysAndLeavesOutWhatIsZero() {
        append(
                movement("a", "2026-11-24T08:00:00Z", "cream", "walk-in", 3),
                movement("b", "2026-11-24T09:00:00Z", "cream", "bar", 4),
                movement("c", "2026-11-24T10:00:00Z", "salt", "bar", 5),
                movement("d", "2026-11-24T11:00:00Z", "salt", "bar", -5));
        assertThat(movements().sums(Selection.all(), List.of("item")))
                .containsExactly(new Sum(Map.of("item", "cream"), Map.of("quantity", 7L, "value", 14L), 2));
        assertThat(movements().sums(Selection.all(), List.of("place", "item")))
                .containsExactly(
                        new Sum(Map.of("place", "bar", "item", "cream"), Map.of("quantity", 4L, "value", 8L), 1),
                        new Sum(Map.of("place", "walk-in", "item", "cream"), Map.of("quantity", 3L, "value", 6L), 1));
        assertThat(movements().sums(Selection.all(), List.of()))
                .containsExactly(new Sum(Map.of(), Map.of("quantity", 7L, "value", 14L), 4));
        assertThat(movements().sums(Selection.all().where("item", "pepper"), List.of()))
                .isEmpty();
        assertThatThrownBy(() -> movements().sums(Selection.all(), List.of("colour")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void sumsExactlyUpToTheLimitAndSaysWhenItIsPassed() {
        append(movement("a", "2026-11-24T08:00:00Z", "cream", "bar", Long.MAX_VALUE / 2 - 1));
        append(movement("b", "2026-11-24T08:00:00Z", "cream", "bar", 1));
        assertThat(movements().sums(Selection.all(), List.of()).get(0).measures())
                .containsEntry("quantity", Long.MAX_VALUE / 2)
                .containsEntry("value", Long.MAX_VALUE - 1);
        append(movement("c", "2026-11-24T08:00:00Z", "cream", "bar", 1));
        assertRefused(Reason.OTHER, () -> movements().sums(Selection.all(), List.of()));
    }

    @Test
    void refusesAnEntryTwiceAndAnEntryOfAnotherShape() {
        LedgerEntry entry = movement("a", "2026-11-24T08:00:00Z", "cream", "bar", 1);
        append(entry);
        assertRefused(Reason.EXISTS, () -> append(entry));
        LedgerEntry other = movement("b", "2026-11-24T08:00:00Z", "cream", "bar", 1);
        assertRefused(Reason.EXISTS, () -> append(other, other));
        LedgerEntry lacking = LedgerEntry.of("c", entry.at(), Map.of("item", "cream"), entry.measures(), "{}");
        assertThatThrownBy(() -> append(lacking)).isInstanceOf(IllegalArgumentException.class);
        LedgerEntry tooEarly = movement("d", "1066-10-14T08:00:00Z", "cream", "bar", 1);
        assertThatThrownBy(() -> append(tooEarly)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> book.ledger("unheard_of")).isInstanceOf(IllegalArgumentException.class);
        assertThat(movements().entries(Selection.all())).containsExactly(entry);
    }

    @Test
    void aReversalHasTheSameKeysAndTimeAndTheOppositeMeasures() {
        append(movement("a", "2026-11-24T08:00:00Z", "cream", "bar", 3));
        reverse("a");
        assertThat(movements().entry("a~1"))
                .contains(new LedgerEntry(
                        "a~1",
                        Instant.parse("2026-11-24T08:00:00Z"),
                        Map.of("item", "cream", "place", "bar"),
                        Map.of("quantity", -3L, "value", -6L),
                        "{\"reason\":\"wrong \\\"crate\\\"\"}",
                        Optional.of("a")));
        assertThat(movements().sums(Selection.all(), List.of())).isEmpty();
    }

    @Test
    void anEntryIsTakenBackOnlyOnceUnlessItStandsAgain() {
        append(movement("a", "2026-11-24T08:00:00Z", "cream", "bar", 3));
        reverse("a");
        assertRefused(Reason.EXISTS, () -> reverse("a"));
        reverse("a~1");
        assertThat(movements().sums(Selection.all(), List.of()).get(0).measures())
                .containsEntry("quantity", 3L);
        reverse("a");
        assertThat(movements().entry("a~2")).isPresent();
        assertThat(movements().sums(Selection.all(), List.of())).isEmpty();
        assertRefused(Reason.OTHER, () -> reverse("z"));
    }

    @Test
    void anEntryOfTheSameTransactionCanBeReversed() {
        book.write("Receive and correct", transaction -> {
            transaction.append("movements", movement("a", "2026-11-24T08:00:00Z", "cream", "bar", 3));
            transaction.reverse("movements", "a", "at once");
            assertRefused(Reason.EXISTS, () -> transaction.reverse("movements", "a", "again"));
            return null;
        });
        assertThat(movements().sums(Selection.all(), List.of())).isEmpty();
        assertThat(movements().entries(Selection.all())).hasSize(2);
    }

    @Test
    void undoReversesEntriesAndRedoRestoresThem() {
        append(
                movement("a", "2026-11-24T08:00:00Z", "cream", "bar", 3),
                movement("b", "2026-11-24T09:00:00Z", "salt", "bar", 4));
        for (int round = 0; round < 3; round++) {
            assertThat(book.history().undo()).contains("Receive");
            assertThat(movements().sums(Selection.all(), List.of())).isEmpty();
            assertThat(book.history().redo()).contains("Receive");
            assertThat(movements().sums(Selection.all(), List.of("item")))
                    .extracting(sum -> sum.measures().get("quantity"))
                    .containsExactly(3L, 4L);
        }
    }

    @Test
    void undoesACorrectionAndThenWhatItCorrected() {
        append(movement("a", "2026-11-24T08:00:00Z", "cream", "bar", 3));
        reverse("a");
        book.history().undo();
        assertThat(movements().sums(Selection.all(), List.of()).get(0).measures())
                .containsEntry("quantity", 3L);
        book.history().undo();
        assertThat(movements().sums(Selection.all(), List.of())).isEmpty();
        book.history().redo();
        book.history().redo();
        assertThat(movements().sums(Selection.all(), List.of())).isEmpty();
    }

    @Test
    void aLedgerWithoutMeasuresCountsItsEntries() {
        LedgerForm visits = new LedgerForm("visits", List.of("who"), List.of());
        book.prepare(new ModuleFormat("diary", 1, List.of(visits), List.of()));
        book.write("Note", transaction -> {
            transaction.append("visits", LedgerEntry.of("1", MORNING, Map.of("who", "inspector"), Map.of(), "{}"));
            return null;
        });
        assertThat(book.ledger("visits").sums(Selection.all(), List.of("who")))
                .containsExactly(new Sum(Map.of("who", "inspector"), Map.of(), 1));
    }

    @Test
    void aWiderFormFillsWhatOlderEntriesLack() {
        append(movement("a", "2026-11-24T08:00:00Z", "cream", "bar", 3));
        LedgerForm wider =
                new LedgerForm("movements", List.of("item", "place", "lot"), List.of("quantity", "value", "pieces"));
        book.prepare(new ModuleFormat("inventory", 2, List.of(wider), List.of()));
        assertThat(movements().entry("a")).hasValueSatisfying(entry -> {
            assertThat(entry.keys()).containsEntry("lot", "").containsEntry("item", "cream");
            assertThat(entry.measures()).containsEntry("pieces", 0L).containsEntry("quantity", 3L);
        });
        reverse("a");
        assertThat(movements().sums(Selection.all(), List.of("lot"))).isEmpty();
    }
}
