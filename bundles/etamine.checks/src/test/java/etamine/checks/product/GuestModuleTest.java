package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.checks.product.ConsoleFront.Said;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A module of somebody else's that fails in one way or another is named with its reason, and the others work. */
class GuestModuleTest {
    private static final String FAULT = "throw new IllegalStateException(\"the oven is cold\");";
    private static final String HANG = "new java.util.concurrent.CountDownLatch(1).await();";

    private static final List<String> PARTS = List.of("bundles", "features");

    @TempDir
    Path folder;

    private Path app;
    private Path modules;

    @BeforeEach
    void laysOutAProgramFolder() throws Exception {
        app = Files.createDirectories(folder.resolve("app"));
        for (String part : PARTS) {
            Files.createSymbolicLink(app.resolve(part), Suite.APP.resolve(part));
        }
        modules = Files.createDirectories(app.resolve("modules"));
    }

    @AfterEach
    void takeTheLinksAway() throws Exception {
        for (String part : PARTS) {
            Files.delete(app.resolve(part));
        }
    }

    @Test
    void oneThatThrowsWhileStarting() throws Exception {
        new GuestModule("etamine.guest", FAULT).packAsActivator(modules, "org.osgi.framework");
        try (Suite suite = suite()) {
            assertThat(suite.failed()).containsOnlyKeys("etamine.guest");
            assertThat(suite.failed().get("etamine.guest")).contains("the oven is cold");
            assertNamedAndOthersWork(suite, "the oven is cold");
        }
    }

    @Test
    void oneWhoseComponentThrows() throws Exception {
        new GuestModule("etamine.guest", FAULT).packAsComponent(modules);
        try (Suite suite = suite()) {
            assertNamedAndOthersWork(suite, "the oven is cold");
        }
    }

    @Test
    void oneThatHangsWhileStarting() throws Exception {
        new GuestModule("etamine.guest", HANG).packAsActivator(modules, "org.osgi.framework");
        long start = System.nanoTime();
        try (Suite suite = suite()) {
            assertThat(suite.failed()).containsOnlyKeys("etamine.guest");
            assertNamedAndOthersWork(suite, "still starting");
        }
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(60));
    }

    @Test
    void oneWhoseComponentHangs() throws Exception {
        new GuestModule("etamine.guest", HANG).packAsComponent(modules);
        try (Suite suite = suite()) {
            assertThat(suite.failed()).containsOnlyKeys("etamine.guest");
            assertNamedAndOthersWork(suite, "still starting");
        }
    }

    @Test
    void oneThatIsNoJarAtAll() throws Exception {
        Files.writeString(modules.resolve("broken.jar"), "This is a shopping list.");
        try (Suite suite = suite()) {
            assertThat(suite.failed()).containsOnlyKeys("broken.jar");
            assertNamedAndOthersWork(suite, "");
        }
    }

    @Test
    void oneThatLacksWhatItImports() throws Exception {
        new GuestModule("etamine.guest", "").packAsActivator(modules, "org.osgi.framework,etamine.nowhere");
        try (Suite suite = suite()) {
            assertThat(suite.failed()).containsOnlyKeys("etamine.guest");
            assertNamedAndOthersWork(suite, "etamine.nowhere");
        }
    }

    private Suite suite() throws Exception {
        return new Suite(app, folder, List.of("base", "recipes"), Map.of("etamine.module.patience", "2"));
    }

    private void assertNamedAndOthersWork(Suite suite, String reason) throws Exception {
        ConsoleFront console = new ConsoleFront(suite, folder);
        Said listed = console.say("modules", "--json");
        assertThat(listed.status()).isEqualTo(1);
        List<JsonNode> failed = StreamSupport.stream(
                        listed.json().path("modules").spliterator(), false)
                .filter(module -> module.path("state").asText().equals("failed"))
                .toList();
        assertThat(failed)
                .singleElement()
                .satisfies(module -> assertThat(module.path("id").asText()
                                + ' '
                                + module.path("failure").asText())
                        .containsAnyOf("etamine.guest", "broken.jar")
                        .contains(reason));
        assertThat(console.say("new", "--json").status()).isZero();
        assertThat(console.say("items", "--json").status()).isZero();
        assertThat(console.say("recipes", "--json").status()).isZero();
        assertThat(console.say("today", "--json").out())
                .as("the call on the pass")
                .containsAnyOf("etamine.guest", "broken.jar");
    }
}
