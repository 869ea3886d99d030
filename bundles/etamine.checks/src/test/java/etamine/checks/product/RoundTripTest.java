package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is loaded is what is dumped: nothing is lost in a book, whichever modules are there. */
class RoundTripTest {
    private static final List<String> ALL =
            List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering");
    private static final List<String> BASE = List.of("base");

    @TempDir
    Path folder;

    @Test
    void loadOfTheDemosDumpGivesAnEqualDump() throws Exception {
        Files.copy(Path.of("..", "..", "demo-data", "ninth-lantern.json"), folder.resolve("demo.json"));
        assertSameDump(ALL);
    }

    @Test
    void loadOfAGeneratedBooksDumpGivesAnEqualDump() throws Exception {
        Files.writeString(folder.resolve("demo.json"), generated(new Random(20261124)));
        assertSameDump(ALL);
    }

    @Test
    void sectionsWithoutTheirModuleAreDumpedUnchangedAndTakenOverWhenItComes() throws Exception {
        Files.copy(Path.of("..", "..", "demo-data", "ninth-lantern.json"), folder.resolve("demo.json"));
        String whole = dumpOf("whole", ALL, "demo.json");
        Files.writeString(folder.resolve("whole.json"), whole);
        assertThat(dumpOf("bare", BASE, "whole.json")).isEqualTo(whole);
        try (Suite suite = new Suite(folder, ALL)) {
            suite.open("bare");
            assertThat(Suite.call(suite.run("check", List.of(), Map.of()), "json")
                            .toString())
                    .doesNotContain("kept/");
            assertThat(dump(suite)).isEqualTo(whole);
        }
    }

    private void assertSameDump(List<String> features) throws Exception {
        String first = dumpOf("first", features, "demo.json");
        Files.writeString(folder.resolve("dump.json"), first);
        assertThat(dumpOf("second", features, "dump.json")).isEqualTo(first);
    }

    private String dumpOf(String book, List<String> features, String file) throws Exception {
        try (Suite suite = new Suite(folder, features)) {
            suite.create(book);
            Object report = suite.run("load", List.of(file), Map.of());
            assertThat(Suite.call(report, "outcome").toString())
                    .as(Suite.call(report, "lines").toString())
                    .isEqualTo("DONE");
            return dump(suite);
        }
    }

    private String dump(Suite suite) throws Exception {
        suite.run("dump", List.of("out.json"), Map.of());
        return read("out.json");
    }

    private String read(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    private static String generated(Random random) {
        String ingredients = lines(
                300,
                i -> String.format(
                        Locale.ROOT,
                        "{\"id\":\"i%d\",\"name\":\"Thing %d\",\"countIn\":\"kg\",\"price\":{\"amount\":\"%d.%02d\",\"per\":\"1 kg\"},\"x-n\":%d}",
                        i,
                        i,
                        random.nextInt(50),
                        random.nextInt(100),
                        random.nextInt()));
        String recipes = lines(
                200,
                i -> String.format(
                        "{\"id\":\"r%d\",\"name\":\"Work %d\",\"uses\":[{\"item\":\"i%d\",\"quantity\":\"%d/7 kg\"},{\"item\":\"%s\",\"quantity\":\"1 1/2 oz\"}],"
                                + "\"makes\":[{\"item\":\"r%d\",\"quantity\":\"1.50 kg\"}]}",
                        i, i, random.nextInt(300), 1 + random.nextInt(20), i == 0 ? "i0" : "r" + random.nextInt(i), i));
        String covers = lines(
                60,
                i -> String.format(
                        "{\"date\":\"%s\",\"covers\":%d}",
                        LocalDate.of(2026, 10, 1).plusDays(i), random.nextInt(90)));
        return "{\"etamine\":\"1\",\"kitchen\":{\"name\":\"G\",\"currency\":\"EUR\",\"zone\":\"UTC\"},\"ingredients\":["
                + ingredients + "],\"recipes\":[" + recipes + "],\"covers\":[" + covers + "]}";
    }

    private static String lines(int count, IntFunction<String> line) {
        return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining(","));
    }
}
