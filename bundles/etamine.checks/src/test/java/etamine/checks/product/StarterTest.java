package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The starter set is a good file of the exchange form, and yield tests work through the console. */
class StarterTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    @Test
    void theStarterSetIsDumpedAndLoadedLikeAnyOtherFile() throws Exception {
        try (Suite suite = new Suite(folder, List.of("base", "recipes"))) {
            suite.create("first");
            JsonNode report = JSON.valueToTree(Suite.call(suite.run("starter", List.of(), Map.of()), "json"));
            assertThat(report.path("added").asInt()).isEqualTo(120);
            String dump = dump(suite);
            suite.create("second");
            Files.writeString(folder.resolve("starter.json"), dump);

            Object loaded = suite.run("load", List.of("starter.json"), Map.of());

            assertThat(Suite.call(loaded, "outcome").toString())
                    .as(Suite.call(loaded, "lines").toString())
                    .isEqualTo("DONE");
            assertThat(dump(suite)).isEqualTo(dump);
            assertThat(JSON.valueToTree(Suite.call(suite.run("check", List.of(), Map.of()), "json"))
                            .path("problems"))
                    .isEmpty();
        }
    }

    @Test
    void aYieldTestIsRecordedAndAcceptedOnTheConsole() throws Exception {
        try (Suite suite = new Suite(folder, List.of("base", "recipes"))) {
            suite.create("book");
            suite.run("starter", List.of(), Map.of());
            List<String> carrot = List.of("carrot", "peeled");
            suite.run("yields", carrot, Map.of("--in", "1 kg", "--out", "800 g", "--by", "Ana"));

            Object report = suite.run("yields", carrot, Map.of("--accept", "mean", "--by", "Ben"));

            JsonNode peeled = JSON.valueToTree(Suite.call(report, "json"))
                    .path("preparations")
                    .path(0);
            // BCcampus, Basic Kitchen and Food Service Management, Yield Testing: 1 kg carrots, 800 g, 80 % (published)
            assertThat(peeled.path("yield").asText()).isEqualTo("0.8");
            assertThat(peeled.path("note").asText())
                    .isEqualTo("Trim test of 2026-11-24 by Ana, 1 kg to 800 g; accepted 2026-11-24 by Ben.");
            assertThat(peeled.path("spread").path("trim").path("mean").asText()).isEqualTo("0.8");
            assertThat(peeled.path("history")).hasSize(1);
        }
    }

    private String dump(Suite suite) throws Exception {
        suite.run("dump", List.of("out.json"), Map.of());
        return Files.readString(folder.resolve("out.json"));
    }
}
