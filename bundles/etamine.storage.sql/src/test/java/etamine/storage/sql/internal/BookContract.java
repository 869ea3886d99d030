package etamine.storage.sql.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every book promises about documents and transactions, whatever it is kept on. */
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
                        BookException.class, problem -> assertThat(problem.reason()).isEqualTo(reason));
    }

    @Test
    void givesBackWhatWasSavedAlsoAfterReopening() {
        assertThat(save("stock", 0, "{\"name\":\"Fond brun, été\"}")).isEqualTo(1);
        Document expected =
                new Document("stock", 1, MORNING, "Save stock", "{\"name\":\"Fond brun, été\"}");
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
                        org.assertj.core.groups.Tuple.tuple(1L, "1", MORNING),
                        org.assertj.core.groups.Tuple.tuple(2L, "", MORNING.plusSeconds(3600)),
                        org.assertj.core.groups.Tuple.tuple(3L, "3", MORNING.plusSeconds(3600)));
    }

    @Test
    void removingWhatIsNotThereDoesNothing() {
        book.write("Remove", transaction -> {
            transaction.remove("recipes", "stock", 0);
            transaction.remove("recipes", "stock", Document.ANY);
            return null;
        });
        assertThat(book.revision()).isZero();
        assertRefused(Reason.STALE, () -> book.write("Remove", transaction -> {
            transaction.remove("recipes", "stock", 1);
            return null;
        }));
    }

    @Test
    void aTransactionSeesItsOwnChangesAndOthersDoNotUntilItEnds() {
        Shelf recipes = book.shelf("recipes");
        book.write("Two steps", transaction -> {
            transaction.save("recipes", "stock", 0, "1");
            assertThat(transaction.get("recipes", "stock")).map(Document::json).contains("1");
            assertThat(recipes.get("stock")).isEmpty();
            assertThat(transaction.save("recipes", "stock", 1, "2")).isEqualTo(1);
            return null;
        });
        assertThat(recipes.history("stock")).extracting(Document::json).containsExactly("2");
    }

    @Test
    void whatATransactionTakesBackItselfLeavesNoTrace() {
        save("stock", 0, "1");
        book.write("Back and forth", transaction -> {
            transaction.save("recipes", "stock", 1, "2");
            assertThat(transaction.save("recipes", "stock", 1, "1")).isEqualTo(1);
            transaction.save("recipes", "new", 0, "x");
            transaction.remove("recipes", "new", 1);
            return null;
        });
        assertThat(book.revision()).isEqualTo(1);
        assertThat(book.shelf("recipes").history("new")).isEmpty();
    }

    @Test
    void aTransactionThatThrowsChangesNothing() {
        assertThatThrownBy(() -> book.write("Fail", transaction -> {
                    transaction.save("recipes", "stock", 0, "1");
                    throw new IllegalStateException("enough");
                }))
                .hasMessage("enough");
        assertThat(book.shelf("recipes").all()).isEmpty();
        assertThat(book.revision()).isZero();
        assertThat(save("stock", 0, "1")).isEqualTo(1);
    }

    @Test
    void aTransactionIsValidOnlyInsideWriteAndNotNested() {
        var kept = book.write("Keep", transaction -> transaction);
        assertThatThrownBy(() -> kept.get("recipes", "stock")).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> book.write("Outer", transaction -> book.write("Inner", inner -> null)))
                .isInstanceOf(IllegalStateException.class);
        assertThat(save("stock", 0, "1")).isEqualTo(1);
    }

    @Test
    void tellsListenersOfEachCommitBeforeWriteReturns() {
        List<Commit> commits = new ArrayList<>();
        var subscription = book.onCommit(commits::add);
        save("stock", 0, "1");
        assertThat(commits).hasSize(1);
        Commit commit = commits.get(0);
        assertThat(commit.touches(Set.of("recipes"))).isTrue();
        assertThat(commit.revision()).isEqualTo(book.revision()).isEqualTo(1);
        assertThat(commit.documents().get(0).document().json()).isEqualTo("1");
        subscription.close();
        subscription.close();
        save("stock", 1, "2");
        assertThat(commits).hasSize(1);
    }

    @Test
    void aListenerThatThrowsKeepsNobodyFromHearing() {
        List<Commit> commits = new ArrayList<>();
        book.onCommit(commit -> {
            throw new IllegalStateException("a listener that fails on purpose");
        });
        book.onCommit(commits::add);
        assertThat(save("stock", 0, "1")).isEqualTo(1);
        assertThat(commits).hasSize(1);
    }

    @Test
    void everyListenerHearsInOrderAlsoWhenOneOfThemWrites() {
        List<Long> heard = new ArrayList<>();
        book.onCommit(commit -> {
            if (commit.revision() == 1) {
                save("sauce", 0, "2");
                assertThat(heard).containsExactly(1L, 2L);
            }
        });
        book.onCommit(commit -> heard.add(commit.revision()));
        save("stock", 0, "1");
        assertThat(heard).containsExactly(1L, 2L);
    }

    @Test
    void readsDoNotWaitForALongWrite() throws InterruptedException, ExecutionException {
        save("stock", 0, "1");
        CountDownLatch written = new CountDownLatch(1);
        CountDownLatch release = new CountDownLatch(1);
        ExecutorService other = Executors.newSingleThreadExecutor();
        try {
            Future<Long> write = other.submit(() -> book.write("Slow", transaction -> {
                long revision = transaction.save("recipes", "stock", 1, "2");
                written.countDown();
                await(release);
                return revision;
            }));
            written.await();
            assertThat(book.shelf("recipes").get("stock")).map(Document::json).contains("1");
            release.countDown();
            assertThat(write.get()).isEqualTo(2);
        } finally {
            release.countDown();
            other.shutdown();
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void writesOfManyThreadsComeOneAfterTheOther() throws InterruptedException, ExecutionException {
        ExecutorService others = Executors.newFixedThreadPool(4);
        try {
            List<Future<?>> done = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                done.add(others.submit(() -> book.write("Count", transaction -> {
                    int count = transaction.get("counts", "one").map(Document::json).map(Integer::valueOf).orElse(0);
                    return transaction.save("counts", "one", Document.ANY, String.valueOf(count + 1));
                })));
            }
            for (Future<?> future : done) {
                future.get();
            }
        } finally {
            others.shutdown();
        }
        assertThat(book.shelf("counts").get("one")).map(Document::json).contains("40");
        assertThat(book.revision()).isEqualTo(40);
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
