package etamine.console.internal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookSession;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.reflect.Proxy;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ConversationTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final List<Verb> always = new ArrayList<>();
    private final List<Verb> withBook = new ArrayList<>();
    private final OneBook session = new OneBook("/kitchen/kitchen.etamine");

    @Test
    void printsTheLinesOfAReport() {
        always.add(verb(
                VerbUsage.of("greet", "Greet", "NAME").withoutBook(),
                call -> Report.done(
                        Map.of(), List.of("Purée for " + call.arguments().get(0)))));
        assertThat(say("greet", "Ann")).isZero();
        assertThat(out()).isEqualTo("Purée for Ann\n");
        assertThat(err()).isEmpty();
    }

    @Test
    void printsOneJsonValueWithAmountsAsText() throws IOException {
        always.add(verb(
                VerbUsage.of("sum", "Sum").withoutBook(),
                call -> Report.done(
                        Map.of("amount", new BigDecimal("1E+3"), "count", 3, "items", List.of("é")),
                        List.of("noise"))));
        assertThat(say("--json", "sum")).isZero();
        JsonNode json = new ObjectMapper().readTree(out());
        assertThat(json.get("amount").textValue()).isEqualTo("1000");
        assertThat(json.get("count").intValue()).isEqualTo(3);
        assertThat(json.at("/items/0").textValue()).isEqualTo("é");
        assertThat(err()).isEmpty();
    }

    @Test
    void opensTheBookForAVerbThatNeedsIt() {
        withBook.add(verb(
                VerbUsage.of("cost", "Cost", "[ID...]"),
                call -> Report.done(Map.of(), List.of(call.location() + call.arguments() + call.options()))));
        assertThat(say("cost", "--book", "kitchen.etamine", "a", "b")).isZero();
        assertThat(out()).isEqualTo("/kitchen/kitchen.etamine[a, b]{}\n");
    }

    @Test
    void saysHowToMakeABookThatIsNotThere() {
        withBook.add(verb(VerbUsage.of("cost", "Cost"), call -> Report.done(Map.of(), List.of())));
        assertThat(say("--book", "other.etamine", "cost")).isEqualTo(2);
        assertThat(err())
                .isEqualTo("etamine: There is no book at /kitchen/other.etamine; make one with 'etamine new',"
                        + " 'etamine demo' or 'etamine load FILE', or say --book FILE.\n");
    }

    @Test
    void namesTheModuleThatBringsAKnownVerb() {
        assertThat(say("plan")).isEqualTo(2);
        assertThat(err()).contains("comes with the module etamine.ordering");
    }

    @Test
    void listsTheVerbsWhenOneIsUnknown() {
        always.add(verb(VerbUsage.of("new", "New").withoutBook(), call -> Report.done(Map.of(), List.of())));
        assertThat(say("nwe", "--json")).isEqualTo(2);
        assertThat(out()).isEqualTo("{\n  \"error\" : \"There is no verb nwe. There are: new.\"\n}\n");
    }

    @Test
    void refusesAnOptionTheVerbDoesNotHaveAndShowsTheCall() {
        always.add(verb(
                VerbUsage.of("load", "Load", "FILE...").withoutBook().with("--accept-good", "", "x"),
                call -> Report.done(Map.of(), List.of())));
        assertThat(say("load", "a", "--acept-good")).isEqualTo(2);
        assertThat(err())
                .isEqualTo(
                        "etamine: load does not know --acept-good." + " Call: etamine load FILE... [--accept-good]\n");
        assertThat(say("load")).isEqualTo(2);
        assertThat(err()).contains("load needs FILE. Call:");
    }

    @Test
    void countsArguments() {
        always.add(
                verb(VerbUsage.of("one", "One", "A", "[B]").withoutBook(), call -> Report.done(Map.of(), List.of())));
        assertThat(say("one", "a", "b")).isZero();
        assertThat(say("one", "a", "b", "c")).isEqualTo(2);
        assertThat(err()).contains("one does not take c.");
    }

    @Test
    void handsOverOptionsWithValuesAndWhatFollowsTwoDashes() {
        always.add(verb(
                VerbUsage.of("to", "To", "[A...]")
                        .withoutBook()
                        .with("--to", "Q", "x")
                        .with("--all", "", "x"),
                call -> Report.done(
                        Map.of(), List.of(call.option("--to").orElse("") + call.has("--all") + call.arguments()))));
        say("to", "--to=3 l", "--all", "--", "--json");
        assertThat(out()).isEqualTo("3 ltrue[--json]\n");
    }

    @Test
    void endsAsTheReportSays() {
        always.add(verb(
                VerbUsage.of("look", "Look").withoutBook(),
                call -> new Report(Outcome.LOOK, Map.of("n", 1), List.of("look here"))));
        assertThat(say("look", "--json")).isEqualTo(1);
        assertThat(err()).isEqualTo("look here\n");
        err.reset();
        assertThat(say("look", "--json", "--quiet")).isEqualTo(1);
        assertThat(err()).isEmpty();
    }

    @Test
    void saysWhyInputWasRejected() {
        always.add(verb(VerbUsage.of("count", "Count").withoutBook(), call -> {
            throw VerbException.rejected("Line 3 has no unit; add one.");
        }));
        assertThat(say("count", "--json")).isEqualTo(3);
        assertThat(out()).contains("\"error\" : \"Line 3 has no unit; add one.\"");
        assertThat(err()).isEqualTo("etamine: Line 3 has no unit; add one.\n");
    }

    @Test
    void aBreakdownEndsWithASentenceAndNoStackUnlessAsked() {
        always.add(verb(VerbUsage.of("break", "Break").withoutBook(), call -> {
            throw new IllegalStateException("inside");
        }));
        assertThat(say("break")).isEqualTo(70);
        assertThat(err()).contains("ETAMINE_DEBUG=1").doesNotContain("\tat ");
        assertThat(conversation(true, new PrintStream(out)).hold(List.of("break")))
                .isEqualTo(70);
        assertThat(err()).contains("\tat ");
    }

    @Test
    void aReaderThatWentAwayIsNoFailure() {
        always.add(verb(VerbUsage.of("many", "Many").withoutBook(), call -> Report.done(Map.of(), List.of("a", "b"))));
        PrintStream gone = new PrintStream(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("Broken pipe");
            }
        });
        assertThat(conversation(false, gone).hold(List.of("many"))).isZero();
    }

    @Test
    void helpAndVersionNeedNoBook() {
        always.add(verb(
                VerbUsage.of("new", "make a book.").withoutBook().with("--name", "NAME", "its name"),
                call -> Report.done(Map.of(), List.of())));
        assertThat(say("--version")).isZero();
        assertThat(say("--book", "nowhere", "--help")).isZero();
        assertThat(out())
                .startsWith("Etamine 1.2.3\n")
                .contains("new   Make a book")
                .contains("More verbs come");
        assertThat(say("help", "new")).isZero();
        assertThat(out()).contains("etamine new [--name NAME]").contains("its name");
    }

    @Test
    void aCallWithoutAVerbIsWrong() {
        assertThat(say()).isEqualTo(2);
        assertThat(say("--book")).isEqualTo(2);
        assertThat(say("--colour", "new")).isEqualTo(2);
        assertThat(out()).isEmpty();
    }

    private int say(String... words) {
        return conversation(false, new PrintStream(out, true, StandardCharsets.UTF_8))
                .hold(List.of(words));
    }

    private Conversation conversation(boolean debug, PrintStream to) {
        Surroundings surroundings = new Surroundings(Path.of("/kitchen"), "kitchen.etamine", "1.2.3", Map.of(), debug);
        Printer printer = new Printer(to, new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Conversation(new ListedVerbs(), session, surroundings, printer);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private interface Doing {
        Report with(VerbCall call) throws VerbException;
    }

    private static Verb verb(VerbUsage usage, Doing doing) {
        return new Verb() {
            @Override
            public VerbUsage usage() {
                return usage;
            }

            @Override
            public Report run(VerbCall call) throws VerbException {
                return doing.with(call);
            }
        };
    }

    private final class ListedVerbs implements Verbs {
        @Override
        public Optional<Verb> find(String name) {
            return all().stream()
                    .filter(verb -> verb.usage().name().equals(name))
                    .findFirst();
        }

        @Override
        public List<Verb> all() {
            List<Verb> all = new ArrayList<>(always);
            if (session.current().isPresent()) {
                all.addAll(withBook);
            }
            return all;
        }
    }

    /** A session that knows one book and never looks into it. */
    private static final class OneBook implements BookSession {
        private final String location;
        private Optional<Book> book = Optional.empty();

        OneBook(String location) {
            this.location = location;
        }

        @Override
        public Book open(String place) {
            if (!place.equals(location)) {
                throw new BookException(BookException.Reason.MISSING, "There is no book at " + place + ".");
            }
            Book opened = (Book) Proxy.newProxyInstance(
                    OneBook.class.getClassLoader(),
                    new Class<?>[] {Book.class},
                    (proxy, method, arguments) -> method.getName().equals("readOnly") ? Optional.empty() : location);
            book = Optional.of(opened);
            return opened;
        }

        @Override
        public Book create(String place) {
            throw new AssertionError("the console makes no books itself");
        }

        @Override
        public void close() {
            book = Optional.empty();
        }

        @Override
        public Optional<Book> current() {
            return book;
        }
    }
}
