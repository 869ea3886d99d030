package etamine.book.internal.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Progress;
import etamine.kitchen.exchange.Exchange.LoadTerms;
import etamine.kitchen.exchange.LoadResult;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that cannot be the exchange form at all: refused with a sentence, and the book is as it was. */
class BadFileTest {
    @TempDir
    Path folder;

    private final VolatileBook book = new VolatileBook();
    private final BookExchange exchange = new BookExchange(book, List.of(new Pantry(book, "pantry")));

    @Test
    void namesLineColumnAndPlaceOfMalformedJson() throws IOException {
        LoadResult.Rejected rejected = refused("{\"etamine\": \"1\",\n\"pantry\": [{\"id\": \"salt\",}]}");
        assertThat(rejected.pointer()).isEqualTo("/pantry/0/id");
        assertThat(rejected.problem())
                .startsWith("Line 2, column 26: this is not JSON")
                .contains("comma");
    }

    @Test
    void saysWhenTheFileEndsTooEarly() throws IOException {
        assertThat(refused("{\"etamine\": \"1\", \"pantry\": [").problem())
                .contains("ends too early")
                .contains("close what was opened");
    }

    @Test
    void refusesAMemberThatStandsTwice() throws IOException {
        assertThat(refused("{\"etamine\": \"1\", \"pantry\": [{\"id\": \"a\", \"id\": \"b\"}]}")
                        .problem())
                .contains("the member \"id\" stands twice");
    }

    @Test
    void refusesWhatFollowsTheEnd() throws IOException {
        assertThat(refused("{\"etamine\": \"1\"} {}").problem()).contains("something follows the end");
    }

    @Test
    void refusesDeepNesting() throws IOException {
        String deep = "[".repeat(100_000) + "]".repeat(100_000);
        assertThat(refused("{\"etamine\": \"1\", \"pantry\": " + deep + "}").problem())
                .contains("too deep");
    }

    @Test
    void refusesNumbersThatNobodyWeighs() throws IOException {
        String huge = "9".repeat(5_000);
        assertThat(refused("{\"etamine\": \"1\", \"pantry\": [{\"id\": \"a\", \"tested\": " + huge + "}]}")
                        .problem())
                .contains("too long");
    }

    @Test
    void namesTheByteThatIsNotUtf8() throws IOException {
        byte[] latin = "{\"etamine\": \"1\",\n\"x\": \"pur\u00e9e\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(refused(latin).problem())
                .isEqualTo("This file is not UTF-8 text: the byte at offset 26 (line 2)"
                        + " cannot stand there; save it as UTF-8.");
        assertThat(refused(latin).pointer()).isEmpty();
    }

    @Test
    void recognisesUtf16WithAndWithoutItsMark() throws IOException {
        assertThat(refused("{\"etamine\": \"1\"}".getBytes(StandardCharsets.UTF_16))
                        .problem())
                .contains("UTF-16");
        assertThat(refused("{\"etamine\": \"1\"}".getBytes(StandardCharsets.UTF_16LE))
                        .problem())
                .contains("UTF-16");
        assertThat(refused("{\"etamine\": \"1\"}".getBytes(Charset.forName("UTF-32BE")))
                        .problem())
                .contains("not UTF-8");
    }

    @Test
    void readsAFileWithAUtf8Mark() throws IOException {
        assertThat(load("\uFEFF{\"etamine\": \"1\", \"pantry\": [{\"id\": \"salt\"}]}".getBytes(StandardCharsets.UTF_8))
                        .written())
                .isTrue();
    }

    @Test
    void refusesTwoHundredMegabytesAtOnceWithoutReadingThem() throws IOException {
        Path file = folder.resolve("huge.json");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(200L << 20);
        }
        Instant start = Instant.now();
        LoadResult result = exchange.load(List.of(file), LoadTerms.strict(), Progress.unseen());
        assertThat(Duration.between(start, Instant.now())).isLessThan(Duration.ofSeconds(2));
        assertThat(result.rejected().get(0).problem())
                .isEqualTo("This file has 200 MB and the largest that is read has 64 MB; split it into several files,"
                        + " or allow more with --largest.");
    }

    @Test
    void asksForTheFormAndItsVersion() throws IOException {
        assertThat(refused("[]").problem()).startsWith("The exchange form is one object");
        assertThat(refused("").problem()).startsWith("This file is empty");
        assertThat(refused("{}").problem()).startsWith("Add \"etamine\": \"1\"");
        LoadResult.Rejected later = refused("{\"etamine\": \"2\"}");
        assertThat(later.pointer()).isEqualTo("/etamine");
        assertThat(later.problem()).contains("newer program");
    }

    @Test
    void saysWhenThereIsNoSuchFileOrOnlyAFolder() {
        assertThat(refused(folder.resolve("nowhere.json")).problem()).startsWith("There is no such file");
        assertThat(refused(folder).problem()).startsWith("This is a folder");
    }

    @Test
    void oneUnreadableFileKeepsAllOutButTheProblemsOfTheOthersAreListed() throws IOException {
        Path good = Files.writeString(folder.resolve("a.json"), "{\"etamine\": \"1\", \"pantry\": [{\"id\": \"\"}]}");
        Path bad = Files.writeString(folder.resolve("b.json"), "{");
        LoadResult result = exchange.load(List.of(good, bad), LoadTerms.good(), Progress.unseen());
        assertThat(result.written()).isFalse();
        assertThat(result.rejected()).extracting(LoadResult.Rejected::file).contains(good, bad);
        assertThat(book.revision()).isZero();
    }

    private LoadResult.Rejected refused(String text) throws IOException {
        return refused(text.getBytes(StandardCharsets.UTF_8));
    }

    private LoadResult.Rejected refused(byte[] bytes) throws IOException {
        return refused(Files.write(folder.resolve("bad.json"), bytes));
    }

    private LoadResult.Rejected refused(Path file) {
        LoadResult result = exchange.load(List.of(file), LoadTerms.strict(), Progress.unseen());
        assertThat(result.written()).isFalse();
        assertThat(result.rejected()).hasSize(1);
        assertThat(book.revision()).isZero();
        return result.rejected().get(0);
    }

    private LoadResult load(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("good.json"), bytes);
        return exchange.load(List.of(file), LoadTerms.strict(), Progress.unseen());
    }
}
