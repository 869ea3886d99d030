package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.inventory.CountLine;
import etamine.inventory.Incoming;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.Place;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class StockExchangeTest {
    private static final String FILE = """
            {"places": [{"id": "walk-in", "name": "Walk-in", "order": 1, "x-code": "W"}],
             "stock": [{"item": "cream", "place": "walk-in", "quantity": "4.5 l", "useBy": "2026-12-01",
                        "unitCost": {"amount": "4.10", "per": "1 l"}, "x-seal": "blue"}],
             "movements": [{"id": "w1", "at": "2026-11-20T18:00:00Z", "kind": "wasted", "item": "cream",
                            "place": "walk-in", "quantity": "0.5 l", "reason": "split"}]}""";

    private final Shelf shelf = new Shelf();

    @Test
    void takesUnnamedWasteFromTheLotThatExpiresFirst() {
        assertThat(shelf.load(FILE)).isEmpty();
        assertThat(shelf.lots("cream")).isEqualTo("[walk-in 4 l 2026-12-01]");
        assertThat(shelf.line("cream").value().orElseThrow()).hasToString("16.40");
    }

    @Test
    void putsOpeningStockWithoutATimeBeforeTheMovementsOfItsFile() {
        shelf.load(FILE);
        assertThat(shelf.dump().at("/stock/0/at").asText()).isEqualTo("2026-11-20T17:59:59Z");
    }

    @Test
    void dumpsWhatLoadsToAnEqualDump() {
        shelf.load(FILE);
        shelf.clock.move(Duration.ofHours(3));
        busy(shelf);
        JsonNode dumped = shelf.dump();
        assertThat(dumped.get("stock").get(0).get("x-seal").asText()).isEqualTo("blue");
        assertThat(dumped.get("places").get(1).get("x-code").asText()).isEqualTo("W");
        Shelf other = new Shelf();
        assertThat(other.load(dumped.toString())).isEmpty();
        assertThat(other.dump()).isEqualTo(dumped);
        Map<String, Map<LotKey, Long>> there = new TreeMap<>(shelf.journal.amounts());
        there.values().removeIf(Map::isEmpty);
        assertThat(other.journal.amounts()).isEqualTo(there);
    }

    private static void busy(Shelf shelf) {
        shelf.room.receive(
                "dairy",
                List.of(new Incoming(
                        "cream",
                        "",
                        Quantity.parse("1/3 l"),
                        Optional.of(LocalDate.of(2026, 12, 9)),
                        Optional.of(UnitPrice.of("24.60", "6 l")),
                        "A7")));
        shelf.take(MovementKind.USED, "cream", "4.2 l");
        shelf.receive("jacket", "2.5 ea", "", "", "");
        String id = shelf.room.movements("jacket", 1).get(0).id();
        shelf.room.reverse(id, "typed twice");
        shelf.receive("celeriac", "1 ea", "", "", "");
        shelf.book.history().undo();
        shelf.room.count(List.of(new CountLine("cream", "walk-in", Quantity.parse("1 l"), Optional.empty(), "")));
        shelf.room.savePlace(new Place("dry", "Dry store", 2));
        shelf.room.move("cream", Quantity.parse("0.25 l").times(Ratio.ONE), "walk-in", "dry");
    }

    @Test
    void skipsWhatItHasAlready() {
        shelf.load(FILE);
        JsonNode before = shelf.dump();
        assertThat(shelf.load(FILE)).isEmpty();
        assertThat(shelf.dump()).isEqualTo(before);
    }

    @Test
    void refusesAnotherMovementUnderTheSameId() {
        shelf.load(FILE);
        assertThat(shelf.load(FILE.replace("\"0.5 l\"", "\"0.6 l\"")))
                .singleElement()
                .asString()
                .startsWith("movements/0: The movement “w1” is in the book already");
    }

    @Test
    void keepsEqualEntriesOfOneFileApart() {
        String twice = """
                {"stock": [{"item": "cream", "quantity": "1 l"}, {"item": "cream", "quantity": "1 l"}]}""";
        assertThat(shelf.load(twice)).isEmpty();
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("2 l"));
        shelf.load(twice);
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("2 l"));
    }

    @Test
    void namesUnknownItemsPlacesAndMissingMeasures() {
        assertThat(shelf.load("""
                {"stock": [{"item": "moonmilk", "place": "attic", "quantity": "1 l"}, {"item": "cream", "quantity": "2 ea"}],
                 "movements": [{"at": "yesterday", "kind": "lost", "item": "cream", "quantity": "one"}]}"""))
                .extracting(trouble -> trouble.substring(0, trouble.indexOf(':')))
                .containsExactlyInAnyOrder(
                        "stock/0/item",
                        "stock/0/place",
                        "stock/1/quantity",
                        "movements/0/at",
                        "movements/0/kind",
                        "movements/0/quantity");
        assertThat(shelf.journal.amounts()).isEmpty();
    }
}
