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
}
