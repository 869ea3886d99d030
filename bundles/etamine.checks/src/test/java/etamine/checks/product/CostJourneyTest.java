package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.checks.product.ConsoleFront.Said;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Trying out, accepting and looking back across the modules that own the documents. */
class CostJourneyTest {
    @TempDir
    Path folder;

    private Suite suite;
    private ConsoleFront console;

    @BeforeEach
    void start() throws Exception {
        suite = new Suite(folder, List.of("base", "recipes", "costing", "catalogue", "inventory"));
        console = new ConsoleFront(suite, folder);
        try (InputStream hook = Objects.requireNonNull(CostJourneyTest.class.getResourceAsStream("hook.json"))) {
            Files.copy(hook, folder.resolve("hook.json"));
        }
        assertThat(console.say("load", "hook.json").status()).isZero();
    }

    @AfterEach
    void stop() {
        suite.close();
    }

    /** A kilogram of sliced leek takes 2 kg at 2.00, at a yield of 0.4 half a kilogram more. */
    @Test
    void whatIsAcceptedStandsOnTheDocumentsAndIsTakenApartAfterwards() throws Exception {
        String[] changes = {"whatif", "yield:leek/sliced=0.4", "menu:plate-soup=12.00", "--json"};
        JsonNode tried = console.say(changes).json().at("/plates/0");
        assertThat(decimal(tried, "/now/plateCost")).isEqualByComparingTo("0.84");
        assertThat(decimal(tried, "/then/plateCost"))
                .isEqualByComparingTo("0.9829"); // (7.00 - 0.40) / 1.4 x 0.2 + 0.04
        assertThat(batch()).as("nothing is written yet").isEqualByComparingTo("6.00");

        Said accepted = console.say("whatif", "yield:leek/sliced=0.4", "menu:plate-soup=12.00", "--accept", "--json");
        assertThat(accepted.status()).as(accepted.err()).isZero();
        assertThat(batch()).isEqualByComparingTo("7.00");
        assertThat(decimal(cost("plate-soup"), "/netPrice")).isEqualByComparingTo("10.5727"); // 12.00 / 1.135

        JsonNode moved = console.say("moved", "--since", "2026-11-20", "--json").json();
        JsonNode plate = moved.at("/plates/0");
        assertThat(plate.path("recipe").asText()).isEqualTo("plate-soup");
        BigDecimal sum = BigDecimal.ZERO;
        for (String effect : List.of("price", "yield", "portion", "recipe")) {
            sum = sum.add(decimal(plate, "/effects/" + effect));
        }
        assertThat(sum).isEqualByComparingTo(decimal(plate, "/change"));
        assertThat(decimal(plate, "/effects/yield")).isPositive();
        assertThat(plate.path("causes")).anySatisfy(cause -> {
            assertThat(cause.path("kind").asText()).isEqualTo("yield");
            assertThat(cause.path("text").asText()).contains("sliced").contains("0.5 to 0.4");
        });
    }

    @Test
    void aPriceThatAnOfferOverrulesIsWrittenAndSaidToBe() throws Exception {
        Said accepted = console.say("whatif", "price:leek=+50%", "--accept", "--json");
        assertThat(accepted.status()).isEqualTo(1);
        assertThat(accepted.json().at("/notes/0").asText()).contains("asked first");
        assertThat(batch()).isEqualByComparingTo("6.00");
        console.say("costing", "--prices", "written");
        assertThat(batch()).as("leek at 3.00, cream at its written 4.50").isEqualByComparingTo("8.25");
    }

    private BigDecimal batch() throws Exception {
        return decimal(cost("leek-soup"), "/batchCost");
    }

    private JsonNode cost(String recipe) throws Exception {
        return console.say("cost", recipe, "--json").json().at("/recipes/0");
    }

    private static BigDecimal decimal(JsonNode json, String pointer) {
        return new BigDecimal(json.at(pointer).asText());
    }
}
