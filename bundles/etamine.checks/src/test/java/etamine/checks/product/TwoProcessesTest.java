package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.checks.product.ConsoleFront.Said;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteDataSource;

/** The program as processes: what each ends with, two of them at one book, and a book of a program to come. */
class TwoProcessesTest {
    @TempDir
    Path folder;

    private Suite suite;
    private ConsoleFront console;
    private ProgramProcess program;

    @BeforeEach
    void layOutABook() throws Exception {
        suite = new Suite(folder, List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering"));
        console = new ConsoleFront(suite, folder);
        program = new ProgramProcess(folder);
        try (InputStream hook = Objects.requireNonNull(TwoProcessesTest.class.getResourceAsStream("hook.json"))) {
            Files.copy(hook, folder.resolve("hook.json"));
        }
        Files.writeString(folder.resolve("bad.json"), "{\"etamine\": \"1\", \"recipes\": [7]}");
        assertThat(console.say("load", "hook.json").status()).isZero();
    }

    @AfterEach
    void stop() {
        suite.close();
    }

    @Test
    void aProcessEndsWithTheStatusOfItsCall() throws Exception {
        Said done = program.say("--book", "book", "cost", "leek-soup", "--json");
        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.json().at("/recipes/0/id").asText()).isEqualTo("leek-soup");
        Said look = program.say("--book", "book", "cost", "--json");
        assertThat(look.status()).isEqualTo(1);
        assertThat(look.json().at("/recipes").size()).isEqualTo(3);
        Said wrong = program.say("--book", "book", "fry", "--json");
        assertThat(wrong.status()).isEqualTo(2);
        assertThat(wrong.json().path("error").asText()).contains("fry");
        Said rejected = program.say("--book", "book", "load", "bad.json", "--json");
        assertThat(rejected.status()).isEqualTo(3);
        assertThat(rejected.json().at("/rejected/0/pointer").asText()).isEqualTo("/recipes/0");
    }

    @Test
    void aSecondProcessIsRefusedAndHarmsNothing() throws Exception {
        suite.open("book");
        suite.run("dump", List.of("before.json"), Map.of());
        for (String call : List.of("items", "load hook.json", "new")) {
            Said refused = program.say(("--book book --json " + call).split(" "));
            assertThat(refused.status()).as(refused.err()).isEqualTo(2);
            assertThat(refused.json().path("error").asText()).contains("book");
        }
        assertThat(program.say("--book", "book", "items").err()).containsIgnoringCase("another");
        suite.run("covers", List.of("2026-11-28", "31"), Map.of());
        suite.run("dump", List.of("after.json"), Map.of());
        assertThat(Files.readString(folder.resolve("after.json")))
                .isNotEqualTo(Files.readString(folder.resolve("before.json")))
                .contains("2026-11-28");
        suite.closeBook();
        assertThat(program.say("--book", "book", "dump", "last.json").status())
                .as("when the first has let go")
                .isZero();
        assertThat(folder.resolve("last.json")).hasSameTextualContentAs(folder.resolve("after.json"));
    }

    @Test
    void aBookOfANewerProgramMayOnlyBeRead() throws Exception {
        console.say("dump", "before.json");
        makeNewer();
        byte[] before = Files.readAllBytes(folder.resolve("book"));
        for (String reading : List.of("items", "cost leek-soup", "stock", "covers", "recipes", "dump after.json")) {
            Said said = console.say((reading + " --json").split(" "));
            assertThat(said.status()).as(said.err()).isZero();
            assertThat(said.err()).contains("may only be read").contains("newer");
        }
        assertThat(folder.resolve("after.json")).hasSameTextualContentAs(folder.resolve("before.json"));
        for (String writing :
                List.of("load hook.json", "covers 2026-11-28 31", "waste leek 1kg", "pars cream 9l", "order")) {
            Said said = console.say((writing + " --json").split(" "));
            assertThat(said.status()).as(writing).isEqualTo(2);
            assertThat(said.json().path("error").asText()).as(writing).contains("newer");
        }
        assertThat(Files.readAllBytes(folder.resolve("book"))).isEqualTo(before);
    }

    private void makeNewer() throws Exception {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + folder.resolve("book"));
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("pragma user_version = 99");
        }
    }
}
