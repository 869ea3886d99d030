package etamine.storage.sql.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.storage.Commit;
import etamine.storage.Document;
import etamine.storage.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

/** What every book promises about transactions and listeners, on top of {@link BookContract}. */
abstract class TransactionContract extends BookContract {

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
    void liveShelvesKnowOfACommitBeforeAnyListener() {
        List<String> seen = new ArrayList<>();
        AtomicReference<Map<String, String>> late = new AtomicReference<>(Map.of());
        book.onCommit(commit -> seen.add(late.get() + " at " + book.followed()));
        book.follow(commit -> {
            late.set(Map.of("stock", "taken in"));
            assertThat(book.followed()).isLessThan(book.revision());
            seen.add("follower at " + book.followed());
        });
        save("stock", 0, "1");
        assertThat(seen).containsExactly("follower at 0", "{stock=taken in} at 1");
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
                    int count = transaction
                            .get("counts", "one")
                            .map(Document::json)
                            .map(Integer::valueOf)
                            .orElse(0);
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
}
