package etamine.catalogue.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class CatalogueVerbsTest {
    private final Bench bench = new Bench();

    @BeforeEach
    void load() {
        bench.load("[" + Bench.DAIRY + "]", """
                [{"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "6 x 1 l", "price": {"amount": "24.60"}}]""");
    }

    private static VerbCall call(String... arguments) {
        return new VerbCall(List.of(arguments), Map.of(), "volatile", Path.of("."), Progress.unseen());
    }

    @Test
    void listsSuppliersWithTheNextDeliveryAndItsCutOff() {
        Report report = new SuppliersVerb(bench.suppliers).run(call());
        JsonNode supplier =
                new ObjectMapper().valueToTree(report.json()).get("suppliers").get(0);
        assertThat(supplier.get("nextDelivery").asText()).isEqualTo("2026-11-27");
        assertThat(supplier.get("orderBy").asText()).isEqualTo("2026-11-26T22:00Z");
        assertThat(report.lines().get(1)).contains("Hill Dairy", "TU FR", "80.00", "2026-11-26 22:00");
    }

    @Test
    void listsTheOffersOfAnItemWithTheirPricePerUnit() throws VerbException {
        Report report = new OffersVerb(bench.catalogue, bench.kitchen).run(call("cream"));
        JsonNode offer =
                new ObjectMapper().valueToTree(report.json()).get("offers").get(0);
        assertThat(offer.get("packPrice").asText()).isEqualTo("24.60");
        assertThat(offer.get("unitPrice").get("amount").asText()).isEqualTo("4.10"); // 24.60 / 6
        assertThat(report.lines()).hasSize(2);
    }

    @Test
    void rejectsAnUnknownItem() {
        assertThatThrownBy(() -> new OffersVerb(bench.catalogue, bench.kitchen).run(call("moonmilk")))
                .isInstanceOfSatisfying(
                        VerbException.class,
                        refused -> assertThat(refused.outcome()).isEqualTo(Outcome.REJECTED));
    }
}
