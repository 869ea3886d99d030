package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.inventory.CountLine;
import etamine.inventory.Movement;
import etamine.inventory.RefusedException;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Quantity;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CountingTest {
    private final Shelf shelf = Shelf.withPlaces();

    private static CountLine line(String item, String place, String quantity, String useBy) {
        return new CountLine(
                item,
                place,
                Quantity.parse(quantity),
                useBy.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(useBy)),
                "");
    }

    private List<Movement> count(CountLine... lines) {
        return shelf.room.count(List.of(lines));
    }

    @Test
    void writesOnlyTheDifference() {
        shelf.receive("cream", "4 l", "", "", "");
        assertThat(count(line("cream", "walk-in", "3.2 l", ""))).singleElement().satisfies(movement -> {
            assertThat(movement.kind()).isEqualTo(MovementKind.COUNTED);
            assertThat(movement.quantity()).isEqualTo(Quantity.parse("-0.8 l"));
        });
        assertThat(count(line("cream", "walk-in", "3.2 l", ""))).isEmpty();
    }

    @Test
    void missesWhatExpiresFirstAndKeepsTheRestOfTheLots() {
        shelf.receive("cream", "2 l", "2026-12-01", "", "");
        shelf.receive("cream", "2 l", "2026-12-05", "", "");
        count(line("cream", "walk-in", "1.5 l", ""));
        assertThat(shelf.lots("cream")).isEqualTo("[walk-in 1.5 l 2026-12-05]");
    }

    @Test
    void setsTheLotsThatAreNamedAndTakesTheOthersAsGone() {
        shelf.receive("cream", "2 l", "2026-12-01", "", "");
        shelf.receive("cream", "2 l", "2026-12-05", "", "");
        count(line("cream", "walk-in", "1 l", "2026-12-01"), line("cream", "walk-in", "3 l", "2026-12-09"));
        assertThat(shelf.lots("cream")).isEqualTo("[walk-in 1 l 2026-12-01, walk-in 3 l 2026-12-09]");
    }

    @Test
    void leavesOtherPlacesAlone() {
        shelf.receive("cream", "2 l", "", "", "");
        shelf.room.move("cream", Quantity.parse("1 l"), "walk-in", "dry");
        count(line("cream", "walk-in", "0 l", ""));
        assertThat(shelf.lots("cream")).isEqualTo("[dry 1 l]");
    }

    @Test
    void makesGoodWhatWasBelowZero() {
        shelf.take(MovementKind.USED, "cream", "1 l");
        count(line("cream", "walk-in", "2 l", ""));
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("2 l"));
        assertThat(shelf.line("cream").lots()).hasSize(1);
    }

    @Test
    void refusesALineThatIsCountedTwice() {
        assertThatThrownBy(() -> count(line("cream", "walk-in", "1 l", ""), line("cream", "walk-in", "2 l", "")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("counted twice");
    }

    private static CountFile file(String text) {
        return CountFile.read(text.getBytes(StandardCharsets.UTF_8), "cream"::equals, "walk-in"::equals);
    }

    @Test
    void readsSemicolonsCommasAndTabsWithMarksOnTop() {
        assertThat(file("\uFEFFitem;place;quantity;useBy;lot\ncream;walk-in;1,5 l;2026-12-01;A7\n")
                        .lines())
                .containsExactly(new CountLine(
                        "cream", "walk-in", Quantity.parse("1.5 l"), Optional.of(LocalDate.of(2026, 12, 1)), "A7"));
        assertThat(file("Quantity,Place,Item\n\"1,5 l\",walk-in,cream\n").lines())
                .hasSize(1);
        assertThat(file("item\tplace\tquantity\ncream\twalk-in\t0 l\n").lines()).hasSize(1);
    }

    @Test
    void namesTheLineOfEveryFault() {
        CountFile count = file("item,place,quantity,useBy\ncream,walk-in,1 l,\nmoonmilk,attic,1 l,\n"
                + "cream,walk-in,lots,\n\ncream,walk-in,1 l,tomorrow\ncream,walk-in,1,5 l,,\n");
        assertThat(count.faults())
                .extracting(fault -> fault.substring(0, 7))
                .containsExactly("Line 3:", "Line 3:", "Line 4:", "Line 6:", "Line 7:", "Line 7:", "Line 7:");
    }

    @Test
    void refusesOtherEncodingsAtTheirLine() {
        byte[] latin =
                "item;place;quantity\ncream;walk-in;1 l\ncrème;walk-in;1 l\n".getBytes(StandardCharsets.ISO_8859_1);
        CountFile count = CountFile.read(latin, id -> true, id -> true);
        assertThat(count.faults()).singleElement().asString().startsWith("Line 3: this is not UTF-8");
        assertThat(count.lines()).isEmpty();
    }

    @Test
    void refusesFilesWithoutHeadings() {
        assertThat(file("").faults()).singleElement().asString().startsWith("Line 1:");
        assertThat(file("cream;walk-in;1 l\n").faults())
                .singleElement()
                .asString()
                .contains("heading row");
    }
}
