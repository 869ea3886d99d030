package etamine.checks.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.checks.product.Suite;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What the whole program makes of the demo kitchen, on the morning of the day it was made for. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoKitchenTest {
    private static final List<String> ALL =
            List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering");
    private static final String TODAY = "2026-11-24";
    private static final String IN_TWO_DAYS = "2026-11-26";

    @TempDir
    static Path folder;

    private final ObjectNode file = DemoFile.read();
    private Suite suite;
    private JsonNode loaded;

    @BeforeAll
    void load() throws Exception {
        suite = new Suite(folder, ALL);
        suite.create("book");
        ObjectNode form = file.deepCopy();
        form.remove("demo");
        Files.writeString(folder.resolve("demo.json"), DemoFile.text(form));
        loaded = json("load", List.of("demo.json"), Map.of());
    }

    @AfterAll
    void close() {
        suite.close();
    }

    private JsonNode json(String verb, List<String> arguments, Map<String, String> options) throws Exception {
        return DemoFile.JSON.valueToTree(plain(Suite.call(suite.run(verb, arguments, options), "json")));
    }

    /** A report's value with null for what is absent, as the console writes it. */
    private static Object plain(Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> plain = new LinkedHashMap<>();
            map.forEach((name, member) -> plain.put(name, plain(member)));
            return plain;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(DemoKitchenTest::plain).toList();
        }
        return value instanceof Optional<?> optional ? optional.orElse(null) : value;
    }

    @Test
    void everyEntryIsAcceptedAndEverySectionHasItsModule() {
        assertThat(loaded.path("rejected")).isEmpty();
        assertThat(loaded.path("kept")).isEmpty();
        for (Map.Entry<String, JsonNode> section : file.properties()) {
            if (section.getValue().isArray()) {
                assertThat(loaded.path("accepted").path(section.getKey()).asInt())
                        .as(section.getKey())
                        .isEqualTo(section.getValue().size());
            }
        }
    }

    @Test
    void aLoadedDumpGivesTheSameDump() throws Exception {
        suite.run("dump", List.of("first.json"), Map.of());
        try (Suite other = new Suite(Files.createDirectory(folder.resolve("other")), ALL)) {
            other.create("book");
            other.run("load", List.of("../first.json"), Map.of());
            other.run("dump", List.of("second.json"), Map.of());
        }
        assertThat(folder.resolve("other/second.json")).hasSameTextualContentAs(folder.resolve("first.json"));
    }

    /** The clock stands in the week the kitchen was made for, so no date moves. */
    @Test
    void theDemoVerbLaysOutTheSameKitchen() throws Exception {
        suite.run("dump", List.of("loaded.json"), Map.of());
        try (Suite other = new Suite(Files.createDirectory(folder.resolve("packed")), ALL)) {
            other.run("demo", List.of(), Map.of());
            other.run("dump", List.of("packed.json"), Map.of());
        }
        assertThat(folder.resolve("packed/packed.json")).hasSameTextualContentAs(folder.resolve("loaded.json"));
    }

    @Test
    void theBookIsInOrder() throws Exception {
        assertThat(json("check", List.of(), Map.of()).path("problems")).isEmpty();
    }

    @Test
    void everyPlatePays() throws Exception {
        Map<String, JsonNode> costs = costs();
        List<String> plates = new ArrayList<>();
        costs.forEach((id, cost) -> {
            if (id.startsWith("plate-")) {
                plates.add(id);
                assertThat(cost.path("foodCostPercent").asDouble()).as(id).isBetween(18.0, 38.0);
            }
            assertThat(cost.path("missing")).as(id).isEmpty();
            assertThat(cost.path("warnings")).as(id).isEmpty();
        });
        assertThat(plates).hasSize(9);
    }

    @Test
    void portionsCostWhatTheyMay() throws Exception {
        costs().forEach((id, cost) -> {
            if (cost.has("portionCost")) {
                assertThat(cost.path("portionCost").asDouble()).as(id).isBetween(0.005, 10.0);
            }
        });
    }

    /** 1.4 kg at 9.20, less 420 g of carcass at 1.00, over 780 g of breast and leg - computed. */
    @Test
    void theCarcassIsCreditedAndTheRestSharedByWeight() throws Exception {
        JsonNode breakdown = costs().get("fowl-breakdown");
        assertThat(breakdown.path("batchCost").asDouble()).isBetween(12.879, 12.881);
        assertThat(breakdown
                        .path("makes")
                        .path(0)
                        .path("unitCost")
                        .path("amount")
                        .asDouble())
                .isBetween(15.973, 15.975);
    }

    private Map<String, JsonNode> costs() throws Exception {
        Map<String, JsonNode> costs = new TreeMap<>();
        json("cost", List.of(), Map.of())
                .path("recipes")
                .forEach(recipe -> costs.put(recipe.path("id").asText(), recipe));
        return costs;
    }

    @Test
    void mostOfTheShelfIsNearItsParAndAFewThingsAreShort() throws Exception {
        List<Double> shares = new ArrayList<>();
        for (JsonNode item : stock()) {
            assertThat(item.path("onHand").asText()).as(item.toString()).doesNotStartWith("-");
            if (item.has("par")) {
                Quantity par = Quantity.parse(item.path("par").asText());
                shares.add(Quantity.parse(item.path("onHand").asText())
                        .dividedBy(par)
                        .doubleValue());
            }
        }
        assertThat(shares).filteredOn(share -> share < 0.3).hasSizeBetween(2, 9);
        assertThat(shares).filteredOn(share -> share > 0.6).hasSizeGreaterThan(shares.size() / 2);
        assertThat(shares).allMatch(share -> share < 2.5);
    }

    @Test
    void oneLotIsPastItsDayAndOneExpiresInTwoDays() throws Exception {
        List<String> past = new ArrayList<>();
        List<String> soon = new ArrayList<>();
        for (JsonNode item : stock()) {
            for (JsonNode lot : item.path("lots")) {
                String useBy = lot.path("useBy").asText("9999");
                if (useBy.compareTo(TODAY) < 0) {
                    past.add(item.path("item").asText());
                } else if (useBy.compareTo(IN_TWO_DAYS) <= 0) {
                    soon.add(item.path("item").asText());
                }
            }
        }
        assertThat(past).containsExactly("brown-shrimp");
        assertThat(soon).containsExactly("fowl-jus");
    }

    @Test
    void everythingOnTheShelfHasAValue() throws Exception {
        for (JsonNode item : stock()) {
            assertThat(item.has("value")).as(item.toString()).isTrue();
        }
    }

    private JsonNode stock() throws Exception {
        return json("stock", List.of(), Map.of()).path("items");
    }

    @Test
    void theHandPlanOrdersFromEverySupplierInReasonableAmounts() throws Exception {
        JsonNode plan = json("plan", List.of(), Map.of("--method", "par", "--days", "7"));
        Map<String, Quantity> pars = new HashMap<>();
        file.path("pars")
                .forEach(par -> pars.put(
                        par.path("item").asText(),
                        Quantity.parse(par.path(par.has("capacity") ? "capacity" : "par")
                                .asText())));
        Set<String> suppliers = new HashSet<>();
        for (JsonNode order : plan.path("orders")) {
            suppliers.add(order.path("supplier").asText());
            assertThat(LocalDate.parse(order.path("deliver").asText())).isAfter(LocalDate.parse(TODAY));
            for (JsonNode line : order.path("lines")) {
                reasonable(line, pars);
            }
        }
        assertThat(suppliers).containsExactlyInAnyOrder("dairy", "poultry", "veg", "fish", "dry");
        assertThat(plan.path("total").asDouble()).isBetween(1_000.0, 3_500.0);
        assertThat(plan.path("shortfalls")).isEmpty();
    }

    private static void reasonable(JsonNode line, Map<String, Quantity> capacities) {
        assertThat(line.path("packs").asLong()).as(line.toString()).isBetween(1L, 20L);
        Quantity ordered = Pack.parse(line.path("pack").asText())
                .total()
                .times(Ratio.of(line.path("packs").asLong()));
        Quantity capacity = capacities.get(line.path("item").asText());
        if (capacity != null && capacity.unit().isLike(ordered.unit())) {
            assertThat(ordered).as(line.toString()).isLessThanOrEqualTo(capacity.times(Ratio.of(4)));
        }
    }
}
