package etamine.checks.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The table "Who may import whom" of docs/architecture.md is what the built jars import, no more and no less: a star
 * stays a star only while somebody looks at every new ray.
 */
class ImportTableTest {
    /** Third-party words of the table and the packages they stand for. */
    private static final Map<String, List<String>> THIRD_PARTY = thirdParty();

    private record Row(Set<String> own, Set<String> foreign) {}

    @Test
    void everyBuiltBundleImportsWhatTheTableSays() throws IOException {
        Map<String, Row> table = table();
        Map<String, Row> built = built();
        assertThat(built.keySet()).as("bundles in the table").isEqualTo(table.keySet());
        String asTable = built.entrySet().stream().map(ImportTableTest::line).collect(Collectors.joining("\n"));
        assertThat(built).as("rows as built:\n" + asTable).isEqualTo(table);
    }

    private static Map<String, Row> built() {
        Map<String, String> exporters = Jars.exporters();
        Map<String, Row> rows = new TreeMap<>();
        Jars.own().forEach((bundle, manifest) -> rows.put(bundle, row(bundle, manifest, exporters)));
        return rows;
    }

    private static Row row(String bundle, Manifest manifest, Map<String, String> exporters) {
        Set<String> own = new TreeSet<>();
        Set<String> foreign = new TreeSet<>();
        for (String name : Jars.packages(manifest, "Import-Package")) {
            if (exporters.containsKey(name)) {
                String from = exporters.get(name).substring("etamine.".length());
                if (!bundle.equals("etamine." + from)) {
                    own.add(from);
                }
            } else if (!name.startsWith("java.")) {
                foreign.add(word(name));
            }
        }
        return new Row(own, foreign);
    }

    private static String word(String name) {
        return THIRD_PARTY.entrySet().stream()
                .filter(entry -> entry.getValue().stream().anyMatch(name::startsWith))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(name);
    }

    private static Map<String, Row> table() throws IOException {
        Map<String, Row> rows = new TreeMap<>();
        for (String line : Files.readAllLines(Jars.ROOT.resolve("docs/architecture.md"))) {
            String[] cells = line.split("\\|", -1);
            if (cells.length == 5 && cells[1].strip().startsWith("etamine.")) {
                rows.put(cells[1].strip(), new Row(words(cells[2]), words(cells[3])));
            }
        }
        return rows;
    }

    private static Set<String> words(String cell) {
        return Arrays.stream(cell.strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String line(Map.Entry<String, Row> entry) {
        return "| " + entry.getKey() + " | " + String.join(" ", entry.getValue().own()) + " | "
                + String.join(" ", entry.getValue().foreign()) + " |";
    }

    private static Map<String, List<String>> thirdParty() {
        Map<String, List<String>> words = new LinkedHashMap<>();
        words.put("jackson", List.of("com.fasterxml.jackson"));
        words.put("schema", List.of("com.networknt"));
        words.put("sql", List.of("javax.sql"));
        words.put("sqlite", List.of("org.sqlite"));
        words.put("fastcsv", List.of("de.siegmar"));
        words.put("imageio", List.of("javax.imageio"));
        words.put("pdfbox", List.of("org.apache.pdfbox", "org.apache.fontbox"));
        words.put("picocli", List.of("picocli"));
        words.put("jface", List.of("org.eclipse.jface", "org.eclipse.core"));
        words.put("swt", List.of("org.eclipse.swt"));
        words.put("osgi", List.of("org.osgi"));
        return words;
    }
}
