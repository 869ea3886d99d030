package etamine.storage.sql.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.storage.Book;
import etamine.storage.BookException.Reason;
import etamine.storage.Document;
import etamine.storage.Ledger.Sum;
import etamine.storage.Selection;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a writing program again and again and looks at what is left. A hundred rounds, in under a minute:
 *
 * <pre>mvn -pl bundles/etamine.storage.sql -am -Dtest=CrashTest -Dsurefire.failIfNoSpecifiedTests=false \
 *     -Detamine.kills=100 package</pre>
 */
class CrashTest {
    private static final int ROUNDS = Integer.getInteger("etamine.kills", 5);
    private static final long SEED = Long.getLong("etamine.kills.seed", 20_261_124L);
    private static final int LANES = 2;
    private static final int LONGEST_MILLIS = 120;

    @TempDir
    Path folder;

    private final SqliteBooks books = new SqliteBooks();

    private String create(String name) {
        String location = folder.resolve(name).toString();
        books.create(location).close();
        return location;
    }

    private Process start(String location) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx64m",
                        "-Dorg.sqlite.tmpdir=" + folder,
                        "-cp",
                        System.getProperty("java.class.path"),
                        CrashWriter.class.getName(),
                        location)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    @Test
    void noKillLosesAnAcknowledgedChangeOrLeavesHalfOfOne() throws InterruptedException, ExecutionException {
        ExecutorService lanes = Executors.newFixedThreadPool(LANES);
        try {
            List<Future<Integer>> kills = new ArrayList<>();
            for (int lane = 0; lane < LANES; lane++) {
                int number = lane;
                kills.add(lanes.submit(() -> killAgainAndAgain(number)));
            }
            int killed = 0;
            for (Future<Integer> kill : kills) {
                killed += kill.get();
            }
            assertThat(killed).isEqualTo(ROUNDS);
        } finally {
            lanes.shutdown();
        }
    }

    /** Kills the writers of one book, this lane's share of all rounds, and says how many that was. */
    private int killAgainAndAgain(int lane) throws IOException, InterruptedException {
        String location = create("lane" + lane + ".book");
        Random random = new Random(SEED + lane);
        int last = 0;
        int killed = 0;
        for (int round = lane; round < ROUNDS; round += LANES) {
            List<Integer> acknowledged = writeAndKill(location, random.nextInt(LONGEST_MILLIS));
            assertThat(acknowledged.get(0))
                    .as("first number of round %d", round)
                    .isEqualTo(last + 1);
            last = check(location, acknowledged.get(acknowledged.size() - 1));
            killed++;
        }
        return killed;
    }

    /** Lets a writer run until some time after its first change and returns every number it acknowledged. */
    private List<Integer> writeAndKill(String location, int millis) throws IOException, InterruptedException {
        Process writer = start(location);
        List<Integer> acknowledged = new ArrayList<>();
        try (BufferedReader lines = writer.inputReader()) {
            String first = lines.readLine();
            assertThat(first).as("the writer's first word").isNotNull();
            acknowledged.add(Integer.valueOf(first));
            Thread.sleep(millis);
            writer.toHandle().destroyForcibly();
            lines.lines().map(Integer::valueOf).forEach(acknowledged::add);
        } finally {
            writer.destroyForcibly().waitFor();
        }
        return acknowledged;
    }

    /** Checks that the book has every number up to the last acknowledged, perhaps one more, and each of them whole. */
    private int check(String location, int acknowledged) {
        try (Book book = books.open(location)) {
            CrashWriter.prepare(book);
            int last = CrashWriter.counter(book);
            assertThat(last).isBetween(acknowledged, acknowledged + 1);
            assertThat(book.integrity()).isEmpty();
            assertThat(book.shelf("papers").all())
                    .extracting(Document::id)
                    .containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(1, last)
                            .mapToObj(String::valueOf)
                            .toList());
            List<Sum> sums = book.ledger("movements").sums(Selection.all(), List.of("number"));
            assertThat(sums).hasSize(last).allSatisfy(sum -> {
                assertThat(sum.entries()).isEqualTo(2);
                assertThat(sum.measures()).containsEntry("quantity", 1L);
            });
            assertThat(book.revision()).isEqualTo(last);
            return last;
        }
    }

    @Test
    void aSecondProcessIsRefusedAndHarmsNothing() throws IOException, InterruptedException {
        String location = create("shared.book");
        Process writer = start(location);
        try (BufferedReader lines = writer.inputReader()) {
            int before = Integer.parseInt(lines.readLine());
            for (int i = 0; i < 20; i++) {
                BookContract.assertRefused(Reason.IN_USE, () -> books.open(location));
            }
            assertThat(Integer.parseInt(lines.readLine())).isEqualTo(before + 1);
            assertThat(writer.isAlive()).isTrue();
        } finally {
            writer.destroyForcibly().waitFor();
        }
        try (Book book = books.open(location)) {
            assertThat(book.integrity()).isEmpty();
            assertThat(CrashWriter.counter(book)).isGreaterThan(1);
        }
    }
}
