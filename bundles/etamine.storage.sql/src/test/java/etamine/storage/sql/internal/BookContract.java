package etamine.storage.sql.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;

import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Books;
import etamine.storage.Codec;
import etamine.storage.Commit;
import etamine.storage.Document;
import etamine.storage.LiveShelf;
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
    void namesTheDocumentsOfAShelfWithoutThoseRemoved() {
        book.write("fill", transaction -> {
            transaction.save("photos", "b", 0, "{\"id\":\"b\"}");
            transaction.save("photos", "c", 0, "{\"id\":\"c\"}");
            return transaction.save("photos", "a", 0, "{\"id\":\"a\"}");
        });
        book.write("clear", transaction -> {
            transaction.remove("photos", "c", Document.ANY);
            return 0;
        });
        assertThat(book.shelf("photos").ids()).containsExactly("a", "b");
        assertThat(book.shelf("nothing").ids()).isEmpty();
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

    @Test
    void givesTheDocumentsAsTheyStoodAtAnInstant() {
        save("stock", 0, "{\"v\":1}");
        save("sauce", 0, "{\"v\":1}");
        clock.move(Duration.ofHours(1));
        save("stock", 1, "{\"v\":2}");
        book.write("Remove sauce", transaction -> {
            transaction.remove("recipes", "sauce", 1);
            return 0;
        });
        clock.move(Duration.ofHours(1));
        save("stock", 2, "{\"v\":3}");
        save("glaze", 0, "{\"v\":1}");

        Shelf shelf = book.shelf("recipes");
        assertThat(shelf.asOf(MORNING.minusSeconds(1))).isEmpty();
        assertThat(shelf.asOf(MORNING))
                .extracting(Document::id, Document::revision)
                .containsExactly(tuple("sauce", 1L), tuple("stock", 1L));
        assertThat(shelf.asOf(MORNING.plus(Duration.ofMinutes(90))))
                .extracting(Document::id, Document::json)
                .containsExactly(tuple("stock", "{\"v\":2}"));
        assertThat(shelf.asOf(clock.instant())).isEqualTo(shelf.all());
        assertThat(book.shelf("other").asOf(clock.instant())).isEmpty();
    }

    @Test
    void givesTheFirstRevisionOfEveryDocumentThereEverWas() {
        save("stock", 0, "{\"v\":1}");
        save("stock", 1, "{\"v\":2}");
        save("sauce", 0, "{\"v\":1}");
        book.write("Remove sauce", transaction -> {
            transaction.remove("recipes", "sauce", 1);
            return 0;
        });
        assertThat(book.shelf("recipes").firsts())
                .extracting(Document::id, Document::json)
                .containsExactly(tuple("sauce", "{\"v\":1}"), tuple("stock", "{\"v\":1}"));
    }

    @Test
    void keepsALiveShelfsValuesAsTheyStoodAndLaterOnesAsFirstWritten() {
        save("stock", 0, "{\"v\":1}");
        clock.move(Duration.ofHours(1));
        save("stock", 1, "{\"v\":2}");
        save("glaze", 0, "{\"v\":1}");
        clock.move(Duration.ofHours(1));
        save("glaze", 1, "{\"v\":2}");
        try (LiveShelf<String> live = new LiveShelf<>(book, "recipes", AS_IT_IS)) {
            assertThat(live.asOf(MORNING)).containsExactly(entry("glaze", "{\"v\":1}"), entry("stock", "{\"v\":1}"));
            assertThat(live.asOf(clock.instant())).isEqualTo(live.values());
            assertThat(live.writtenAt("glaze")).contains(clock.instant());
            assertThat(live.writtenAt("sauce")).isEmpty();
            assertThat(live.firstWritten("glaze")).contains(MORNING.plus(Duration.ofHours(1)));
        }
    }

    private static final Codec<String> AS_IT_IS = new Codec<>() {
        @Override
        public String read(String id, String json) {
            return json;
        }

        @Override
        public String write(String value) {
            return value;
        }
    };
}
