package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that uses every section and every member of the published schema comes back as it went in. */
class WholeFormTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path DOCS = Path.of("..", "..", "docs");
    private static final Path DEMO = Path.of("..", "..", "demo-data", "ninth-lantern.json");
    private static final List<String> ALL =
            List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering");
    private static JsonNode published;
    private static JsonNode hook;

    @TempDir
    Path folder;

    @BeforeAll
    static void readBoth() throws Exception {
        published = JSON.readTree(DOCS.resolve("exchange.schema.json").toFile());
        try (InputStream in = Objects.requireNonNull(WholeFormTest.class.getResourceAsStream("hook.json"))) {
            hook = JSON.readTree(in);
        }
    }

    @Test
    void theBookUsesEveryMemberThereIs() {
        Set<String> unused = new TreeSet<>();
        collectUnused(published, List.of(hook), "", unused);
        assertThat(unused).isEmpty();
    }

    @Test
    void theDumpIsWhatWasLoaded() throws Exception {
        Files.writeString(folder.resolve("hook.json"), hook.toString());
        try (Suite suite = new Suite(folder, ALL)) {
            ConsoleFront console = new ConsoleFront(suite, folder);
            assertThat(console.say("load", "hook.json").status()).isZero();
            console.say("dump", "dump.json");
        }
        JsonNode dumped = JSON.readTree(folder.resolve("dump.json").toFile());
        assertThat(dumped.fieldNames()).toIterable().containsExactlyInAnyOrderElementsOf((Iterable<String>)
                hook::fieldNames);
        hook.properties()
                .forEach(section -> assertThat(sorted(dumped.get(section.getKey())))
                        .as(section.getKey())
                        .isEqualTo(sorted(section.getValue())));
    }

    @Test
    void thePublishedSchemaIsASchema() {
        Schema meta = SchemaRegistry.withDialect(Dialects.getDraft202012())
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(published)).isEmpty();
        assertThat(meta.validate(JSON.createObjectNode().put("type", "sausage")))
                .as("the schema of schemas itself refuses")
                .isNotEmpty();
    }

    @Test
    void theBookAndTheDemoKitchenFitThePublishedSchema() throws Exception {
        Schema schema = SchemaRegistry.withDialect(Dialects.getDraft202012()).getSchema(published);
        assertThat(schema.validate(hook)).isEmpty();
        assertThat(schema.validate(JSON.readTree(DEMO.toFile()))).isEmpty();
        assertThat(schema.validate(JSON.readTree("{\"etamine\": \"1\", \"recipes\": [7]}")))
                .isNotEmpty();
    }

    /** Walks the schema along the values that are there; what no value reaches is unused. */
    private static void collectUnused(JsonNode schema, List<JsonNode> values, String path, Set<String> unused) {
        JsonNode real =
                schema.has("$ref") ? published.at(schema.get("$ref").asText().substring(1)) : schema;
        real.path("properties").properties().forEach(member -> {
            List<JsonNode> found = values.stream()
                    .map(value -> value.path(member.getKey()))
                    .filter(value -> !value.isMissingNode())
                    .toList();
            if (found.isEmpty()) {
                unused.add(path + '/' + member.getKey());
            } else {
                collectUnused(member.getValue(), found, path + '/' + member.getKey(), unused);
            }
        });
        if (real.has("items")) {
            List<JsonNode> elements = new ArrayList<>();
            values.forEach(value -> value.forEach(elements::add));
            collectUnused(real.get("items"), elements, path, unused);
        }
    }

    /** The entries of a section in an order of their own; within an entry the order is kept. */
    private static JsonNode sorted(JsonNode section) {
        if (!(section instanceof ArrayNode array)) {
            return section;
        }
        List<JsonNode> entries = new ArrayList<>();
        array.forEach(entries::add);
        entries.sort(Comparator.comparing(WholeFormTest::key));
        return JSON.createArrayNode().addAll(entries);
    }

    private static String key(JsonNode entry) {
        return entry.path("id").asText()
                + entry.path("supplier").asText()
                + entry.path("item").asText()
                + entry.path("date").asText()
                + entry.path("recipe").asText();
    }
}
