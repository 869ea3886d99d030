package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.checks.product.ConsoleFront.Said;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Modules come and go while the program runs and a book is open; what stays goes on working. */
class ModulesAtRunTimeTest {
    private static final List<String> ALL =
            List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering");

    @TempDir
    static Path folder;

    private static Suite suite;
    private static ConsoleFront console;

    @BeforeAll
    static void openABook() throws Exception {
        suite = new Suite(
                folder, ALL, Map.of("etamine.stopped", folder.resolve("stopped").toString()));
        console = new ConsoleFront(suite, folder);
        try (InputStream hook = Objects.requireNonNull(ModulesAtRunTimeTest.class.getResourceAsStream("hook.json"))) {
            Files.copy(hook, folder.resolve("hook.json"));
        }
        assertThat(console.say("load", "hook.json").status()).isZero();
    }

    @AfterAll
    static void stop() {
        suite.close();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "etamine.recipes, recipes",
        "etamine.costing, cost",
        "etamine.catalogue, offers",
        "etamine.inventory, stock",
        "etamine.diary, covers",
        "etamine.ordering, plan"
    })
    void aModuleIsStoppedAndComesBackWhileTheBookIsOpen(String module, String verb) throws Exception {
        suite.open("book");
        String before = String.valueOf(json(verb));
        suite.bundle(module).stop();
        assertThat(suite.verbs()).doesNotContainKey(verb).containsKeys("items", "dump");
        assertThat(suite.unsatisfied()).as("without " + module).isEmpty();
        suite.bundle(module).start();
        assertThat(suite.unsatisfied()).as("with " + module + " again").isEmpty();
        assertThat(suite.verbs()).containsKey(verb);
        assertThat(String.valueOf(json(verb))).isEqualTo(before);
        suite.closeBook();
    }

    /** All of them, over and over, in orders nobody would think of; the seed makes it the same every time. */
    @Test
    void anyOrderOfComingAndGoingLeavesTheBookAsItWas() throws Exception {
        suite.open("book");
        suite.run("dump", List.of("before.json"), Map.of());
        Random random = new Random(11);
        List<String> modules = new ArrayList<>(ALL.subList(1, ALL.size()));
        for (int round = 0; round < 5; round++) {
            Collections.shuffle(modules, random);
            for (String module : modules) {
                suite.bundle("etamine." + module).stop();
            }
            assertThat(suite.unsatisfied()).isEmpty();
            Collections.shuffle(modules, random);
            for (String module : modules) {
                suite.bundle("etamine." + module).start();
                assertThat(suite.unsatisfied()).as(module + " of " + modules).isEmpty();
            }
        }
        suite.run("dump", List.of("after.json"), Map.of());
        assertThat(folder.resolve("after.json")).hasSameTextualContentAs(folder.resolve("before.json"));
        suite.closeBook();
    }

    @Test
    void theVerbOfAStoppedModuleSaysWhichModuleBringsIt() throws Exception {
        assertThat(console.say("modules", "stop", "costing").status()).isZero();
        assertThat(state("etamine.costing")).isEqualTo("stopped");
        Said said = console.say("cost", "--json");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.json().path("error").asText()).contains("etamine.costing");
        assertThat(Files.readAllLines(folder.resolve("stopped"))).containsExactly("etamine.costing");
        assertThat(console.say("modules", "start", "costing").status()).isZero();
        assertThat(Files.readAllLines(folder.resolve("stopped"))).isEmpty();
        assertThat(console.say("cost", "leek-soup").status()).isZero();
    }

    @Test
    void whatEverythingElseNeedsStays() throws Exception {
        Said said = console.say("modules", "stop", "etamine.book", "--json");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.err()).contains("etamine.book");
        assertThat(console.say("items", "--json").status()).isZero();
    }

    /** A module that somebody stopped stays stopped at the next start. */
    @Test
    void aStoppedModuleStaysStopped() throws Exception {
        Path list = folder.resolve("stopped-earlier");
        Files.writeString(list, "etamine.diary\n");
        try (Suite later = new Suite(folder, ALL, Map.of("etamine.stopped", list.toString()))) {
            later.create("later");
            assertThat(later.verbs()).doesNotContainKey("covers").containsKey("plan");
            assertThat(later.unsatisfied()).isEmpty();
        }
    }

    private static Object json(String verb) throws Exception {
        return Suite.call(suite.run(verb, List.of(), Map.of()), "json");
    }

    private static String state(String module) throws Exception {
        JsonNode modules = console.say("modules", "--json").json().path("modules");
        return StreamSupport.stream(modules.spliterator(), false)
                .filter(each -> each.path("id").asText().equals(module))
                .map(each -> each.path("state").asText())
                .findFirst()
                .orElseThrow();
    }
}
