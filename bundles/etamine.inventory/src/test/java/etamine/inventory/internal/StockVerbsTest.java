package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.measures.Quantity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StockVerbsTest {
    private final Shelf shelf = Shelf.withPlaces();

    @TempDir
    Path folder;

    private JsonNode run(Verb verb, Map<String, String> options, String... arguments) throws VerbException {
        Report report = verb.run(new VerbCall(List.of(arguments), options, "volatile", folder, Progress.unseen()));
        assertThat(report.outcome()).isEqualTo(Outcome.DONE);
        return new ObjectMapper().valueToTree(report.json());
    }

    @Test
    void showsStockWithLotsAndTotal() throws VerbException {
        shelf.receive("cream", "2 l", "2026-12-01", "4.20", "1 l");
        JsonNode json = run(new StockVerb(shelf.room, shelf.kitchen), Map.of());
        JsonNode cream = json.get("items").get(0);
        assertThat(cream.get("onHand").asText()).isEqualTo("2 l");
        assertThat(cream.get("onOrder").asText()).isEqualTo("0 l");
        assertThat(cream.get("value").asText()).isEqualTo("8.40");
        assertThat(cream.at("/lots/0/useBy").asText()).isEqualTo("2026-12-01");
        assertThat(cream.at("/lots/0/unitCost/amount").asText()).isEqualTo("4.20");
        assertThat(json.get("totalValue").asText()).isEqualTo("8.40");
    }

    @Test
    void showsStockAsItWas() throws VerbException {
        shelf.receive("cream", "2 l", "", "", "");
        StockVerb stock = new StockVerb(shelf.room, shelf.kitchen);
        assertThat(run(stock, Map.of("--at", "2026-11-23")).get("items")).isEmpty();
        assertThat(run(stock, Map.of("--at", "2026-11-24")).get("items")).hasSize(1);
        assertThat(run(stock, Map.of("--at", "2026-11-24T08:59:59Z")).get("items"))
                .isEmpty();
        assertThatThrownBy(() -> run(stock, Map.of("--at", "noon")))
                .isInstanceOfSatisfying(
                        VerbException.class,
                        wrong -> assertThat(wrong.outcome()).isEqualTo(Outcome.WRONG_CALL));
    }

    @Test
    void countsAFileAndWritesTheDifferences() throws VerbException, IOException {
        shelf.receive("cream", "2 l", "", "", "");
        Files.writeString(folder.resolve("count.csv"), "item;place;quantity\ncream;walk-in;1 1/2 l\njacket;dry;4 ea\n");
        CountVerb count = new CountVerb(shelf.room, shelf.items, shelf.places);
        JsonNode movements = run(count, Map.of(), "count.csv").get("movements");
        assertThat(movements).extracting(m -> m.get("quantity").asText()).containsExactly("-0.5 l", "4 ea");
        assertThat(run(count, Map.of(), "count.csv").get("movements")).isEmpty();
    }

    @Test
    void rejectsAFaultyCountWholeWithLineNumbers() throws IOException {
        Files.writeString(folder.resolve("count.csv"), "item;place;quantity\ncream;walk-in;1 l\nmoonmilk;dry;4 ea\n");
        CountVerb count = new CountVerb(shelf.room, shelf.items, shelf.places);
        assertThatThrownBy(() -> run(count, Map.of(), "count.csv"))
                .isInstanceOfSatisfying(VerbException.class, rejected -> {
                    assertThat(rejected.outcome()).isEqualTo(Outcome.REJECTED);
                    assertThat(rejected).hasMessageStartingWith("Line 3: there is no item “moonmilk”");
                });
        assertThat(shelf.journal.amounts()).isEmpty();
    }

    @Test
    void writesOffWasteWithItsReason() throws VerbException {
        shelf.receive("cream", "2 l", "", "", "");
        JsonNode movement = run(
                        new WasteVerb(shelf.room, shelf.items), Map.of("--reason", "split"), "cream", "500", "ml")
                .get("movements")
                .get(0);
        assertThat(movement.get("kind").asText()).isEqualTo("wasted");
        assertThat(movement.get("quantity").asText()).isEqualTo("0.5 l");
        assertThat(movement.get("reason").asText()).isEqualTo("split");
        assertThatThrownBy(() -> run(new WasteVerb(shelf.room, shelf.items), Map.of(), "cream", "2 ea"))
                .isInstanceOfSatisfying(VerbException.class, rejected -> {
                    assertThat(rejected.outcome()).isEqualTo(Outcome.REJECTED);
                    assertThat(rejected).hasMessageContaining("Add ");
                });
    }

    @Test
    void saysWhenMoreWasTakenThanWasThere() throws VerbException {
        shelf.receive("cream", "0.6 l", "", "", "");
        Verb waste = new WasteVerb(shelf.room, shelf.items);
        Report report =
                waste.run(new VerbCall(List.of("cream", "1 l"), Map.of(), "volatile", folder, Progress.unseen()));
        assertThat(report.outcome()).isEqualTo(Outcome.LOOK);
        assertThat(report.lines())
                .contains("More Cream has gone out than ever came in, by 0.4 l: enter what came, or count it.");
        JsonNode json = new ObjectMapper().valueToTree(report.json());
        assertThat(json.get("movements")).hasSize(2);
        assertThat(json.get("warnings")).hasSize(1);
        assertThat(shelf.room.owing("cream")).contains(Quantity.parse("0.4 l"));
        assertThat(shelf.room.owing("celeriac")).isEmpty();
    }

    @Test
    void writesEachDoorByItsOwnVerb() throws VerbException {
        shelf.receive("cream", "8 l", "2026-12-01", "4.20", "1 l");
        Map<Verb, String> doors = Map.of(
                new StaffVerb(shelf.room, shelf.items), "staff",
                new GiveVerb(shelf.room, shelf.items), "given",
                new ResellVerb(shelf.room, shelf.items), "resold");
        for (Map.Entry<Verb, String> door : doors.entrySet()) {
            JsonNode movement = run(door.getKey(), Map.of(), "cream", "1 l").at("/movements/0");
            assertThat(movement.get("kind").asText()).isEqualTo(door.getValue());
            assertThat(movement.get("quantity").asText()).isEqualTo("1 l");
        }
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("5 l"));
    }

    @Test
    void transfersInAndOut() throws VerbException {
        shelf.receive("cream", "2 l", "", "", "");
        TransferVerb transfer = new TransferVerb(shelf.room, shelf.items);
        JsonNode out = run(transfer, Map.of("--reason", "the bar"), "out", "cream", "0.5 l")
                .at("/movements/0");
        assertThat(out.get("kind").asText()).isEqualTo("sent");
        JsonNode in = run(transfer, Map.of("--reason", "the bar", "--paid", "9.00"), "in", "cream", "1.5", "l")
                .at("/movements/0");
        assertThat(in.get("kind").asText()).isEqualTo("brought");
        assertThat(in.get("reason").asText()).isEqualTo("from the bar");
        assertThat(in.at("/unitCost/per").asText()).isEqualTo("1.5 l");
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("3 l"));
    }

    @Test
    void refusesATransferThatSaysNotWhichWay() {
        TransferVerb transfer = new TransferVerb(shelf.room, shelf.items);
        for (List<String> wrong : List.of(List.<String>of(), List.of("cream", "1 l"), List.of("in", "cream"))) {
            assertThatThrownBy(() -> run(transfer, Map.of(), wrong.toArray(String[]::new)))
                    .isInstanceOfSatisfying(
                            VerbException.class,
                            call -> assertThat(call.outcome()).isEqualTo(Outcome.WRONG_CALL));
        }
        assertThatThrownBy(() -> run(transfer, Map.of("--use-by", "soon"), "in", "cream", "1 l"))
                .isInstanceOf(VerbException.class);
        assertThatThrownBy(() -> run(transfer, Map.of("--paid", "a lot"), "in", "cream", "1 l"))
                .isInstanceOfSatisfying(
                        VerbException.class, call -> assertThat(call.outcome()).isEqualTo(Outcome.REJECTED));
    }
}
