package etamine.recipes.internal.line;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.recipes.UseLines.Reading;
import etamine.recipes.internal.Range;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PastedListTest {
    private final Range range = new Range();

    @BeforeEach
    void list() {
        range.item("celeriac", "kg", List.of(Range.prepared("peeled, large dice", "0.74", "1 cup = 156 g")));
        range.item("butter", "kg");
        range.item("onions", "kg", List.of(), "1 ea = 150 g");
        range.item("egg", "ea", List.of(), "1 ea = 60 g");
    }

    @Test
    void takesAPastedListApart() {
        var pasted = range.lines.readAll("For the purée:\r\n- 2 cup celeriac, peeled, large dice\r\n\r\n"
                + "2) 250 g butter\r\u2022 3 eggs\n\u2610 pepper\n---\n1.5 kg onions");

        assertThat(pasted)
                .extracting(line -> line.number() + " " + line.text() + " "
                        + line.reading()
                                .map(reading -> reading instanceof Reading.Clear ? "clear" : "unclear")
                                .orElse("heading"))
                .containsExactly(
                        "1 For the purée: heading",
                        "2 2 cup celeriac, peeled, large dice clear",
                        "4 250 g butter clear",
                        "5 3 eggs clear",
                        "6 pepper unclear",
                        "7 --- heading",
                        "8 1.5 kg onions clear");
    }

    @Test
    void readsAPastedMegabyteInTimeThatGrowsWithItsLengthAlone() {
        String line = "2 cup celriac, peeled, large dice and more words that nobody knows, a, b, c or d or e\n";
        String some = line.repeat(500);
        range.lines.readAll(some);

        long start = System.nanoTime();
        range.lines.readAll(some);
        long first = System.nanoTime() - start;
        start = System.nanoTime();
        assertThat(range.lines.readAll(some.repeat(4))).hasSize(2_000);
        long second = System.nanoTime() - start;

        assertThat(second).as("%d ns for a quarter", first).isLessThan(first * 16 + 1_000_000_000L);
        assertThat(range.lines.readAll("butter, or ".repeat(100_000))).hasSize(1);
        assertThat(range.lines.readAll("\r\n".repeat(500_000))).isEmpty();
        assertThat(range.lines.readAll("(".repeat(1_000_000))).hasSize(1);
    }
}
