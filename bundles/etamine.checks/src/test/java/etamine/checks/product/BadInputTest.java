package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is wrong with a file: it is rejected with its place and what to do, and the book stays as it is. */
class BadInputTest {
    private static final String GOOD = """
            {"etamine": "1",
             "kitchen": {"name": "L", "currency": "EUR", "zone": "Europe/Dublin"},
             "ingredients": [{"id": "salt", "name": "Salt", "countIn": "kg"}]}
            """;

    @TempDir
    static Path folder;

    private static Suite suite;

    @BeforeAll
    static void openABookWithSalt() throws Exception {
        suite = new Suite(folder, List.of("base", "recipes"));
        suite.create("book");
        Files.writeString(folder.resolve("good.json"), GOOD);
        assertThat(outcome(load("good.json"))).isEqualTo("DONE");
    }

    @AfterAll
    static void stop() {
        suite.close();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "ingredients": [{"id": "a", "name": "A",}]                                             | /ingredients/0/name         | not JSON
            "ingredients": [{"id": "a", "name": "A", "price": {"amount": "-1", "per": "1 kg"}}]    | /ingredients/0/price/amount | less than zero
            "ingredients": [{"id": "a", "name": "A", "price": {"amount": "1", "per": "1 slab"}}]   | /ingredients/0/price/per | slab
            "ingredients": [{"id": "a", "name": "A", "preparations": [{"name": "x", "yield": "0"}]}] | /ingredients/0/preparations/0/yield | more than 0
            "ingredients": [{"id": "a", "name": "A", "preparations": [{"name": "x", "yield": "-0.5"}]}] | /ingredients/0/preparations/0/yield | 0 or more
            "ingredients": [{"id": "a", "name": "A", "preparations": [{"name": "x", "tests": [{"date": "2026-11-24", "in": "1 kg", "out": "1.1 kg"}]}]}] | /ingredients/0/preparations/0/tests/0/out | cooking test
            "ingredients": [{"id": "a", "name": "A", "preparations": [{"name": "x", "tests": [{"date": "2026-11-24", "in": "1 kg", "out": "1 cup"}]}]}] | /ingredients/0/preparations/0/tests/0/out | 800 g
            "ingredients": [{"id": "a", "name": "A"}, {"id": "a", "name": "B"}]                    | /ingredients/1              | Duplicate id
            "ingredients": [{"id": "a", "name": "A", "mayContian": ["nuts"]}]                      | /ingredients/0/mayContian   | mayContain
            "recipes": [{"id": "r", "name": "R", "uses": [{"item": "salt", "quantity": "2 smidgen"}], "makes": [{"item": "r", "quantity": "1 kg"}]}] | /recipes/0/uses/0/quantity | smidgen
            "recipes": [{"id": "r", "name": "R", "uses": [{"item": "salt", "quantity": "1 cup"}], "makes": [{"item": "r", "quantity": "1 kg"}]}] | /recipes/0/uses/0/quantity | what 1 cup weighs
            "recipes": [{"id": "r", "name": "R", "uses": [{"item": "ghost", "quantity": "1 kg"}], "makes": [{"item": "r", "quantity": "1 kg"}]}] | /recipes/0/uses/0/item | ghost
            "recipes": [{"id": "r", "name": "R", "uses": [{"item": "r", "quantity": "1 kg"}], "makes": [{"item": "r", "quantity": "1 kg"}]}] | /recipes/0/uses | circle
            """)
    void isRejectedWithItsPlace(String section, String pointer, String problem) throws Exception {
        Files.writeString(folder.resolve("bad.json"), "{\"etamine\": \"1\", " + section + "}");
        assertThat(rejected()).anySatisfy(each -> {
            assertThat(each.get("pointer")).isEqualTo(pointer);
            assertThat(String.valueOf(each.get("problem"))).contains(problem);
        });
    }

    @Test
    void aHugeFileIsRefusedUnread() throws Exception {
        try (RandomAccessFile huge =
                new RandomAccessFile(folder.resolve("bad.json").toFile(), "rw")) {
            huge.setLength(200L << 20);
        }
        assertThat(rejected())
                .singleElement()
                .satisfies(
                        each -> assertThat(String.valueOf(each.get("problem"))).contains("200 MB"));
    }

    @Test
    void anotherEncodingIsRefusedWithTheByteThatShowsIt() throws Exception {
        Files.write(
                folder.resolve("bad.json"), "{\"etamine\": \"1\", \"x\": \"é\"}".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(rejected())
                .singleElement()
                .satisfies(
                        each -> assertThat(String.valueOf(each.get("problem"))).contains("byte at offset 23"));
    }

    /** Loads {@code bad.json}, which must not change the book, and gives what was rejected. */
    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> rejected() throws Exception {
        String before = dump();
        Object report = load("bad.json");
        assertThat(outcome(report)).isEqualTo("REJECTED");
        assertThat(dump()).isEqualTo(before);
        Map<String, Object> json = (Map<String, Object>) Suite.call(report, "json");
        return (List<Map<String, Object>>) json.get("rejected");
    }

    private static String dump() throws Exception {
        suite.run("dump", List.of("dump.json"), Map.of());
        return read("dump.json");
    }

    private static String read(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    private static Object load(String name) throws Exception {
        return suite.run("load", List.of(name), Map.of());
    }

    private static String outcome(Object report) throws Exception {
        return Suite.call(report, "outcome").toString();
    }
}
