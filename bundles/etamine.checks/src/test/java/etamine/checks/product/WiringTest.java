package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the services of the whole suite find each other; circles among them show only while the program runs. */
class WiringTest {
    private static final List<String> ALL =
            List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering");

    @TempDir
    Path folder;

    @Test
    void everyComponentIsSatisfiedAndTheRuntimeHasNothingToComplainOf() throws Exception {
        String complaints = heard(() -> {
            try (Suite suite = new Suite(folder, ALL)) {
                assertThat(suite.failed()).isEmpty();
                suite.create("book");
                for (Object verb : suite.verbs().values()) {
                    Suite.call(verb, "usage");
                }
                assertThat(suite.unsatisfied()).isEmpty();
                suite.run("check", List.of(), Map.of());
                suite.run("today", List.of(), Map.of());
                suite.run("plan", List.of(), Map.of());
                suite.closeBook();
            }
        });
        assertThat(complaints).isEmpty();
    }

    /** The check above would be worth nothing if the runtime complained somewhere else. */
    @Test
    void aComplaintOfTheRuntimeIsHeard() throws Exception {
        Path app = Files.createDirectories(folder.resolve("app"));
        for (String part : List.of("bundles", "features")) {
            Files.createSymbolicLink(app.resolve(part), Suite.APP.resolve(part));
        }
        Path modules = Files.createDirectories(app.resolve("modules"));
        new GuestModule("etamine.guest", "throw new IllegalStateException(\"cold\");").packAsComponent(modules);
        String complaints = heard(() -> new Suite(app, folder, List.of("base"), Map.of()).close());
        Files.delete(app.resolve("bundles"));
        Files.delete(app.resolve("features"));
        assertThat(complaints).contains("ERROR").contains("etamine.guest");
    }

    private interface Work {
        void run() throws Exception;
    }

    private static String heard(Work work) throws Exception {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream ear = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        System.setOut(ear);
        System.setErr(ear);
        try {
            work.run();
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
