package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A kitchen installs what it needs: every subset of the modules starts and does what its members can do. */
class ModuleSubsetTest {
    private static final List<String> MODULES =
            List.of("recipes", "costing", "catalogue", "inventory", "diary", "ordering");
    private static final Map<String, String> VERBS = Map.of(
            "base", "items",
            "recipes", "recipes",
            "costing", "cost",
            "catalogue", "offers",
            "inventory", "stock",
            "diary", "covers",
            "ordering", "plan");

    @TempDir
    Path folder;

    static List<List<String>> subsets() {
        return IntStream.range(0, 1 << MODULES.size())
                .mapToObj(ModuleSubsetTest::subset)
                .toList();
    }

    private static List<String> subset(int bits) {
        List<String> chosen = new ArrayList<>(List.of("base"));
        for (int i = 0; i < MODULES.size(); i++) {
            if ((bits & 1 << i) != 0) {
                chosen.add(MODULES.get(i));
            }
        }
        return chosen;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("subsets")
    void startsAndDoesWhatItsMembersCanDo(List<String> chosen) throws Exception {
        try (Suite suite = new Suite(folder, chosen)) {
            assertThat(suite.failed()).isEmpty();
            suite.create("book");
            assertThat(suite.unsatisfied()).isEmpty();
            Map<String, Object> verbs = suite.verbs();
            for (String module : VERBS.keySet()) {
                assertThat(verbs.containsKey(VERBS.get(module))).as(module).isEqualTo(chosen.contains(module));
            }
            for (String module : chosen) {
                Object report = suite.run(VERBS.get(module), List.of(), Map.of());
                assertThat(Suite.call(report, "outcome").toString()).as(module).isIn("DONE", "LOOK");
            }
            suite.closeBook();
            assertThat(suite.verbs()).as("verbs without a book").doesNotContainKey("items");
        }
    }
}
