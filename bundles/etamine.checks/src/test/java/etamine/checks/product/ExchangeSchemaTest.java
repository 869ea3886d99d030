package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The published schema is the one the modules check by; an old one would tell people wrong things. */
class ExchangeSchemaTest {
    private static final Path PUBLISHED = Path.of("..", "..", "docs", "exchange.schema.json");
    private static final List<String> ALL =
            List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering");

    @TempDir
    Path folder;

    @Test
    void thePublishedSchemaIsThatOfTheModules() throws Exception {
        try (Suite suite = new Suite(folder, ALL)) {
            suite.create("book");
            suite.run("schema", List.of("schema.json"), Map.of());
        }
        assertThat(PUBLISHED)
                .as(
                        "run 'product/etamine --book any.etamine schema docs/exchange.schema.json' on a new book, commit the file")
                .hasSameTextualContentAs(folder.resolve("schema.json"));
    }
}
