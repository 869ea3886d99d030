package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two ingredients become one in every module of the whole program, and undo brings every use of both back. */
class MergeTest {
    private static final List<String> ALL =
            List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String BOOK = """
            {"etamine": "1",
             "kitchen": {"name": "L", "currency": "EUR", "zone": "Europe/Dublin"},
             "ingredients": [
               {"id": "celeriac", "name": "Celeriac", "countIn": "kg", "measures": [{"of": "1 ea", "is": "750 g"}],
                "contains": ["celery"], "allergensKnown": true},
               {"id": "root", "name": "Celery root", "countIn": "kg",
                "measures": [{"of": "1 ea", "is": "900 g"}, {"of": "1 crate", "is": "10 kg"}],
                "preparations": [{"name": "diced", "yield": "0.7"}]},
               {"id": "milk", "name": "Milk", "countIn": "l"}],
             "recipes": [
               {"id": "soup", "name": "Soup", "portion": "200 g",
                "uses": [{"item": "root", "quantity": "2 ea", "x-mark": 1},
                         {"item": "root", "quantity": "500 g", "as": "diced"},
                         {"item": "milk", "quantity": "1 l", "or": ["root"]}],
                "makes": [{"item": "soup", "quantity": "2 kg"}]}],
             "suppliers": [{"id": "green", "name": "Green"}],
             "offers": [
               {"supplier": "green", "item": "root", "pack": "6 x 1 ea", "price": {"amount": "9.00"}},
               {"supplier": "green", "item": "celeriac", "code": "C-1", "pack": "5 kg", "price": {"amount": "8.00"}}],
             "places": [{"id": "walk-in", "name": "Walk-in"}],
             "pars": [{"item": "root", "par": "4 ea", "weekdays": {"FR": "1 crate"}}, {"item": "celeriac", "par": "5 kg"}],
             "stock": [{"item": "root", "place": "walk-in", "quantity": "3 kg", "useBy": "2026-12-01", "lot": "L7",
                        "unitCost": {"amount": "2.00", "per": "1 kg"}},
                       {"item": "celeriac", "place": "walk-in", "quantity": "1 kg"}],
             "movements": [{"id": "m1", "at": "2026-11-24T09:00:00Z", "kind": "used", "item": "root",
                            "place": "walk-in", "lot": "L7", "useBy": "2026-12-01", "quantity": "500 g"}],
             "onOrder": [{"supplier": "green", "item": "root", "packs": 2, "deliver": "2026-11-27"}],
             "orders": [{"id": "O-1", "supplier": "green", "deliver": "2026-11-28", "state": "draft", "currency": "EUR",
                         "fee": "0", "lines": [{"item": "root", "packs": 1, "pack": "6 x 1 ea", "packPrice": "9.00",
                                                "amount": "9.00"}]}],
             "use": [{"date": "2026-11-27", "item": "root", "quantity": "1 ea"},
                     {"date": "2026-11-27", "item": "celeriac", "quantity": "1 kg"}]}
            """;

    @TempDir
    Path folder;

    private Suite suite;

    @BeforeEach
    void openABookThatNamesOneRootTwice() throws Exception {
        suite = new Suite(folder, ALL);
        suite.create("book");
        Files.writeString(folder.resolve("book.json"), BOOK);
        Object report = suite.run("load", List.of("book.json"), Map.of());
        assertThat(outcome(report)).as(Suite.call(report, "lines").toString()).isEqualTo("DONE");
    }

    @AfterEach
    void stop() {
        suite.close();
    }

    @Test
    void everyModuleSaysOfTheSurvivorWhatItSaidOfTheOther() throws Exception {
        merge("root", "celeriac");

        ObjectNode now = dump();
        JsonNode uses = now.path("recipes").path(0).path("uses");
        // 1 ea weighed 900 g of the one and weighs 750 g of the other, so that two of them are written as a weight
        assertThat(uses.path(0).path("quantity").asText()).isEqualTo("1.8 kg");
        assertThat(uses.path(0).path("x-mark").asInt()).isEqualTo(1);
        assertThat(uses.path(1).path("as").asText()).isEqualTo("diced");
        assertThat(uses.path(2).path("or").path(0).asText()).isEqualTo("celeriac");
        assertThat(uses.findValuesAsText("item")).containsExactly("celeriac", "celeriac", "milk");
        assertThat(now.path("offers").findValuesAsText("pack")).containsExactlyInAnyOrder("6 x 900 g", "5 kg");
        assertThat(now.path("pars")).hasSize(1);
        assertThat(now.path("pars").path(0).path("par").asText()).isEqualTo("8.6 kg");
        assertThat(now.path("pars").path(0).path("weekdays").path("FR").asText())
                .isEqualTo("15 kg");
        assertThat(now.path("onOrder").path(0).path("item").asText()).isEqualTo("celeriac");
        assertThat(now.path("orders").path(0).path("lines").path(0).path("item").asText())
                .isEqualTo("celeriac");
        assertThat(now.path("use")).hasSize(1);
        assertThat(now.path("use").path(0).path("quantity").asText()).isEqualTo("1.9 kg");
        for (String section : List.of("recipes", "offers", "pars", "onOrder", "orders", "use")) {
            assertThat(now.path(section).toString()).as(section).doesNotContain("\"root\"");
        }
    }

    @Test
    void stockGoesOverLotByLotWithItsDayMarkAndCost() throws Exception {
        merge("root", "celeriac");

        JsonNode items = stock().path("items");
        assertThat(items).hasSize(1);
        assertThat(items.path(0).path("item").asText()).isEqualTo("celeriac");
        assertThat(items.path(0).path("onHand").asText()).isEqualTo("3.5 kg");
        assertThat(items.path(0).path("lots").toString()).contains("2026-12-01").contains("L7");
        JsonNode in = moved("celeriac");
        assertThat(in.path("unitCost").path("amount").asText()).isEqualTo("2.00");
        assertThat(in.path("quantity").asText()).isEqualTo("3 kg");
        assertThat(in.path("reason").asText()).isEqualTo("Merged Celery root into Celeriac");
        assertThat(moved("root").path("quantity").asText()).isEqualTo("-3 kg");
    }

    @Test
    void undoBringsEveryUseOfBothBack() throws Exception {
        ObjectNode before = dump();
        JsonNode stockBefore = stock();
        merge("root", "celeriac");

        Object undone = Suite.call(history(), "undo");

        assertThat(undone).isEqualTo(Optional.of("Merge Celery root into Celeriac"));
        ObjectNode after = dump();
        // a ledger keeps what was taken back beside what takes it back; together they come to nothing
        assertThat(stock()).isEqualTo(stockBefore);
        before.remove("movements");
        after.remove("movements");
        assertThat(after).isEqualTo(before);
    }

    @Test
    void theDumpOfAMergedBookLoadsAgainAndGivesAnEqualDump() throws Exception {
        merge("root", "celeriac");
        ObjectNode first = dump();
        Files.writeString(folder.resolve("merged.json"), first.toString());
        suite.create("second");

        Object report = suite.run("load", List.of("merged.json"), Map.of());

        assertThat(outcome(report)).as(Suite.call(report, "lines").toString()).isEqualTo("DONE");
        assertThat(dump()).isEqualTo(first);
        assertThat(stock().path("items")).hasSize(1);
    }

    @Test
    void aPreviewListsThePlacesOfAllModulesAndWritesNothing() throws Exception {
        ObjectNode before = dump();

        Object report = suite.run("merge", List.of("root", "celeriac"), Map.of("--preview", "true"));

        JsonNode json = JSON.valueToTree(Suite.call(report, "json"));
        assertThat(json.path("rewritten").findValuesAsText("kind"))
                .containsExactlyInAnyOrder("covers", "offer", "order", "order", "par", "recipe", "stock");
        assertThat(dump()).isEqualTo(before);
    }

    @Test
    void whatCannotBeSaidOfTheOtherIsRefusedAndNothingIsWritten() throws Exception {
        ObjectNode before = dump();

        assertThat(refusal("milk", "celeriac")).contains("counted in l").contains("what 1 l weighs");
        assertThat(refusal("soup", "celeriac")).contains("no ingredient “soup”");

        assertThat(dump()).isEqualTo(before);
    }

    private String refusal(String from, String into) throws Exception {
        try {
            suite.run("merge", List.of(from, into), Map.of());
            return "";
        } catch (Exception refused) {
            return String.valueOf(refused.getMessage());
        }
    }

    private void merge(String from, String into) throws Exception {
        assertThat(outcome(suite.run("merge", List.of(from, into), Map.of()))).isEqualTo("DONE");
    }

    /** The half of the lot that has a cost; what was used of it without naming its cost goes over beside it. */
    private JsonNode moved(String item) throws Exception {
        for (JsonNode movement : dump().path("movements")) {
            if (movement.path("kind").asText().equals("moved")
                    && movement.has("unitCost")
                    && movement.path("item").asText().equals(item)) {
                return movement;
            }
        }
        throw new AssertionError("Nothing of " + item + " was moved.");
    }

    private Object history() throws Exception {
        Object session = suite.service("etamine.storage.BookSession");
        Object book = ((Optional<?>) Suite.call(session, "current")).orElseThrow();
        return Suite.call(book, "history");
    }

    private JsonNode stock() throws Exception {
        return JSON.valueToTree(Suite.call(suite.run("stock", List.of(), Map.of()), "json"));
    }

    private ObjectNode dump() throws Exception {
        suite.run("dump", List.of("out.json"), Map.of());
        return (ObjectNode) JSON.readTree(Files.readString(folder.resolve("out.json")));
    }

    private static String outcome(Object report) throws Exception {
        return Suite.call(report, "outcome").toString();
    }
}
