package etamine.storage.sql.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Books;
import etamine.storage.Commit;
import etamine.storage.Document;
import etamine.storage.Shelf;
import etamine.testing.SetClock;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every book promises about documents, whatever it is kept on. */
abstract class BookContract {
    static final Instant MORNING = Instant.parse("2026-11-24T09:00:00Z");

    @TempDir
    Path folder;

    SetClock clock = SetClock.at("2026-11-24T09:00:00Z");
    Books books;
    Book book;

    abstract Books books(SetClock clock);

    String location(String name) {
        return folder.resolve(name).toString();
    }

    @BeforeEach
    void createsABook() {
        books = books(clock);
        book = books.create(location("kitchen.book"));
    }

    @AfterEach
    void closesIt() {
        book.close();
    }

    void reopen() {
        book.close();
        book = books.open(location("kitchen.book"));
    }

    long save(String id, long expected, String json) {
        return book.write("Save " + id, transaction -> transaction.save("recipes", id, expected, json));
    }

    static void assertRefused(Reason reason, Runnable act) {
        assertThatThrownBy(act::run)
                .isInstanceOfSatisfying(
                        BookException.class,
                        problem -> assertThat(problem.reason()).isEqualTo(reason));
    }

    @Test
    void givesBackWhatWasSavedAlsoAfterReopening() {
        assertThat(save("stock", 0, "{\"name\":\"Fond brun, été\"}")).isEqualTo(1);
        Document expected = new Document("stock", 1, MORNING, "Save stock", "{\"name\":\"Fond brun, été\"}");
        assertThat(book.shelf("recipes").get("stock")).contains(expected);
        reopen();
        assertThat(book.shelf("recipes").get("stock")).contains(expected);
        assertThat(book.shelf("recipes").get("sauce")).isEmpty();
        assertThat(book.shelf("other").all()).isEmpty();
    }

    @Test
    void listsPresentDocumentsById() {
        save("b", 0, "{}");
        save("a", 0, "{}");
        save("c", 0, "{}");
        book.write("Remove b", transaction -> {
            transaction.remove("recipes", "b", 1);
            return null;
        });
        assertThat(book.shelf("recipes").all()).extracting(Document::id).containsExactly("a", "c");
    }

    @Test
    void refusesAStaleRevisionAndChangesNothing() {
        save("stock", 0, "1");
        save("stock", 1, "2");
        assertRefused(Reason.STALE, () -> save("stock", 1, "3"));
        assertRefused(Reason.STALE, () -> save("stock", 0, "3"));
        assertRefused(Reason.STALE, () -> save("sauce", 1, "3"));
        assertThat(book.shelf("recipes").get("stock")).map(Document::json).contains("2");
        assertThat(book.revision()).isEqualTo(2);
        assertThat(save("stock", Document.ANY, "4")).isEqualTo(3);
    }

    @Test
    void savingTheSameKeepsTheRevisionAndLeavesNoTrace() {
        save("stock", 0, "1");
        List<Commit> commits = new ArrayList<>();
        book.onCommit(commits::add);
        assertThat(save("stock", 1, "1")).isEqualTo(1);
        assertThat(commits).isEmpty();
        assertThat(book.revision()).isEqualTo(1);
        assertThat(book.history().undoable()).contains("Save stock");
        assertThat(book.shelf("recipes").history("stock")).hasSize(1);
    }

    @Test
    void countsRevisionsAcrossRemovalAndKeepsTombstones() {
        save("stock", 0, "1");
        clock.move(Duration.ofHours(1));
        book.write("Remove", transaction -> {
            transaction.remove("recipes", "stock", 1);
            return null;
        });
        assertThat(book.shelf("recipes").get("stock")).isEmpty();
        assertRefused(Reason.STALE, () -> save("stock", 2, "3"));
        assertThat(save("stock", 0, "3")).isEqualTo(3);
        assertThat(book.shelf("recipes").history("stock"))
                .extracting(Document::revision, Document::json, Document::at)
                .containsExactly(
                        tuple(1L, "1", MORNING),
                        tuple(2L, "", MORNING.plusSeconds(3600)),
                        tuple(3L, "3", MORNING.plusSeconds(3600)));
    }

    @Test
    void removingWhatIsNotThereDoesNothing() {
        book.write("Remove", transaction -> {
            transaction.remove("recipes", "stock", 0);
            transaction.remove("recipes", "stock", Document.ANY);
            return null;
        });
        assertThat(book.revision()).isZero();
        assertRefused(
                Reason.STALE,
                () -> book.write("Remove", transaction -> {
                    transaction.remove("recipes", "stock", 1);
                    return null;
                }));
    }

    @Test
    void aClosedBookSaysSo() {
        Shelf recipes = book.shelf("recipes");
        book.close();
        book.close();
        assertRefused(Reason.OTHER, () -> recipes.get("stock"));
        assertRefused(Reason.OTHER, () -> save("stock", 0, "1"));
    }

    @Test
    void theRevisionGoesOnAfterReopening() {
        save("stock", 0, "1");
        reopen();
        assertThat(book.revision()).isEqualTo(1);
        save("stock", 1, "2");
        assertThat(book.revision()).isEqualTo(2);
    }

    @Test
    void aBookIsNeverCreatedOverAnotherAndOpensOnlyOnce() {
        assertThat(books.exists(location("kitchen.book"))).isTrue();
        assertThat(books.exists(location("other.book"))).isFalse();
        assertRefused(Reason.EXISTS, () -> books.create(location("kitchen.book")));
        assertRefused(Reason.MISSING, () -> books.open(location("other.book")));
        assertRefused(Reason.IN_USE, () -> books.open(location("kitchen.book")));
        assertThat(save("stock", 0, "1")).isEqualTo(1);
    }
}
