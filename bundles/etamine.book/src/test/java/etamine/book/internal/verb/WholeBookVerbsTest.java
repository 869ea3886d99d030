package etamine.book.internal.verb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import etamine.base.Problem;
import etamine.base.Progress;
import etamine.base.Subject;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.book.internal.KitchenSection;
import etamine.book.internal.exchange.Exchanges;
import etamine.kitchen.exchange.Exchange;
import etamine.kitchen.exchange.LoadResult;
import etamine.kitchen.find.Finder.Found;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookSession;
import etamine.storage.Books;
import etamine.testing.VolatileBook;
import etamine.testing.VolatileBooks;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeBookVerbsTest {
    private static final String KITCHEN = "{\"name\":\"L\",\"currency\":\"EUR\",\"zone\":\"UTC\"}";

    @TempDir
    Path folder;

    private final Books shop = new VolatileBooks(Clock.systemUTC());
    private final BookSession session = new PlainSession(shop);

    @Test
    void loadMakesTheBookThatIsNotThere() throws Exception {
        file("k.json", KITCHEN);
        Report report = run(load(), Map.of(), "k.json");
        assertThat(report.outcome()).isEqualTo(Outcome.DONE);
        assertThat(json(report)).containsEntry("made", true).containsEntry("accepted", Map.of("kitchen", 1));
        assertThat(report.lines().get(0)).startsWith("Made the book ");
        assertThat(session.current()).isPresent();
    }

    @Test
    void aRejectedLoadLeavesNoBookBehind() throws Exception {
        file("k.json", "{}");
        Report report = run(load(), Map.of(), "k.json");
        assertThat(report.outcome()).isEqualTo(Outcome.REJECTED);
        assertThat(json(report)).containsEntry("written", false).containsEntry("made", false);
        assertThat(report.lines()).last().asString().contains("3 problems; nothing was written");
        assertThat(session.current()).isEmpty();
    }

    @Test
    void loadOfTheGoodEndsWithSomethingToLookAt() throws Exception {
        Files.writeString(folder.resolve("k.json"), "{\"etamine\": \"1\", \"kitchen\": {}, \"later\": [1, 2]}");
        Report report = run(load(), Map.of("--accept-good", "true"), "k.json");
        assertThat(report.outcome()).isEqualTo(Outcome.LOOK);
        assertThat(json(report)).containsEntry("kept", Map.of("later", 2));
        assertThat(folder.resolve("k.rejected.json")).exists();
    }

    @Test
    void loadNamesAFileThatIsNotThereAndASizeThatIsNone() {
        assertThatExceptionOfType(VerbException.class)
                .isThrownBy(() -> run(load(), Map.of(), "nowhere.json"))
                .withMessage("There is no file nowhere.json; check its name and folder.")
                .matches(e -> e.outcome() == Outcome.WRONG_CALL);
        assertThatExceptionOfType(VerbException.class).isThrownBy(() -> run(load(), Map.of("--largest", "2000000")));
    }

    @Test
    void aNewBookThatCannotBeFilledIsWithdrawn() {
        assertThatExceptionOfType(IndexOutOfBoundsException.class)
                .isThrownBy(() -> run(new NewVerb(session), Map.of()));
        assertThat(session.current()).isEmpty();
    }

    @Test
    void aDemoBookThatFailsOnTheWayIsWithdrawnWithItsFile() {
        DemoVerb verb = new DemoVerb(session, book -> {
            create(Path.of(book.location()));
            throw new IllegalStateException("broken");
        });
        assertThatExceptionOfType(IllegalStateException.class).isThrownBy(() -> run(verb, Map.of()));
        assertThat(session.current()).isEmpty();
        assertThat(folder.resolve("kitchen.etamine")).doesNotExist();
    }

    @Test
    void dumpWritesWhatLoadRead() throws Exception {
        file("k.json", KITCHEN);
        run(load(), Map.of(), "k.json");
        Book book = session.current().orElseThrow();
        Report report = run(new DumpVerb(Exchanges.of(book, new KitchenSection(book))), Map.of(), "d.json");
        assertThat(json(report)).containsEntry("sections", Map.of("kitchen", 1));
        assertThat(Files.readString(folder.resolve("d.json")))
                .contains("\"currency\" : \"EUR\"")
                .endsWith("}\n");
    }

    @Test
    void dumpNeverOverwritesTheBook() throws IOException {
        Path file = Files.createFile(folder.resolve("book"));
        Book book = shop.create(file.toString());
        assertThatExceptionOfType(BookException.class)
                .isThrownBy(() -> run(new DumpVerb(Exchanges.of(book)), Map.of(), "book"))
                .withMessageContaining("is the book itself");
    }

    @Test
    void checkPutsTheWorstFirstAndGoesOnWhenACheckBreaks() throws Exception {
        CheckVerb verb = new CheckVerb(
                new VolatileBook(),
                List.of(
                        () -> List.of(Problem.note("n", "a/1", "A remark.")),
                        () -> {
                            throw new IllegalStateException("broken");
                        },
                        () -> List.of(Problem.warning("w", "b/1", "A doubt."))));
        Report report = run(verb, Map.of());
        assertThat(report.outcome()).isEqualTo(Outcome.LOOK);
        assertThat(report.lines()).hasSize(3);
        assertThat(report.lines().get(0)).startsWith("error").contains("broken");
        assertThat(report.lines().get(2)).isEqualTo("note  a/1: A remark.");
    }

    @Test
    void checkOfASoundBookIsDone() throws Exception {
        Report report = run(new CheckVerb(new VolatileBook(), List.of()), Map.of());
        assertThat(report.outcome()).isEqualTo(Outcome.DONE);
        assertThat(report.json()).isEqualTo(Map.of("problems", List.of()));
    }

    @Test
    void backupAndRestoreGiveTheSameBook() throws Exception {
        Book book = shop.create("first");
        book.write("x", t -> t.save("s", "d", 0, "{}"));
        run(new BackupVerb(book), Map.of(), "copy");
        Report report = run(new RestoreVerb(shop), Map.of(), "copy");
        assertThat(shop.open((String) json(report).get("book")).shelf("s").get("d"))
                .isPresent();
    }

    @Test
    void findAsksEveryFinder() throws Exception {
        FindVerb verb = new FindVerb(List.of(
                (text, most) -> List.of(new Found(new Subject("item", "salt"), text + "!", "dry")),
                (text, most) -> List.of()));
        Report report = run(verb, Map.of(), "sea", "salt");
        assertThat(report.lines()).contains("item  salt  sea salt!  dry");
    }

    private LoadVerb load() {
        return new LoadVerb(session, new Exchange() {
            @Override
            public LoadResult load(List<Path> files, LoadTerms terms, Progress progress) {
                Book book = session.current().orElseThrow();
                return Exchanges.of(book, new KitchenSection(book)).load(files, terms, progress);
            }

            @Override
            public LoadResult load(String name, String form, Progress progress) {
                throw new AssertionError("load takes files");
            }

            @Override
            public Map<String, Integer> dump(Path file, Progress progress) {
                throw new AssertionError("load does not dump");
            }
        });
    }

    private Report run(Verb verb, Map<String, String> options, String... arguments) throws VerbException {
        String location = folder.resolve("kitchen.etamine").toString();
        return verb.run(new VerbCall(List.of(arguments), options, location, folder, Progress.unseen()));
    }

    private static void create(Path file) {
        try {
            Files.createFile(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void file(String name, String kitchen) throws IOException {
        Files.writeString(folder.resolve(name), "{\"etamine\": \"1\", \"kitchen\": " + kitchen + "}");
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> json(Report report) {
        return (Map<String, Object>) report.json();
    }

    private static final class PlainSession implements BookSession {
        private final Books shop;
        private Optional<Book> book = Optional.empty();

        PlainSession(Books shop) {
            this.shop = shop;
        }

        @Override
        public Book open(String location) {
            book = Optional.of(shop.open(location));
            return book.get();
        }

        @Override
        public Book create(String location) {
            book = Optional.of(shop.create(location));
            return book.get();
        }

        @Override
        public void close() {
            book.ifPresent(Book::close);
            book = Optional.empty();
        }

        @Override
        public Optional<Book> current() {
            return book;
        }
    }
}
