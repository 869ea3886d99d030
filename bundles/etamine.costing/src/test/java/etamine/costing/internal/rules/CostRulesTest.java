package etamine.costing.internal.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.costing.CostRules;
import etamine.costing.CostSettings;
import etamine.costing.internal.larder.Larder;
import etamine.costing.internal.live.LiveCosts;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.measures.UnitPrice;
import etamine.testing.SetFacts;
import etamine.testing.VolatileBook;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CostRulesTest {
    private static final String FULL =
            "{\"prices\":[\"written\",\"offer\"],\"labour\":{\"on\":true,\"perHour\":\"15.00\","
                    + "\"stations\":{\"sauce\":\"16.50\"}},\"targetFoodCostPercent\":\"28\",\"endings\":[\".50\",\".95\"],"
                    + "\"x-own\":7}";

    private final VolatileBook book = new VolatileBook();
    private final ShelvedCostSettings settings = new ShelvedCostSettings(book);
    private final CostingSection section = new CostingSection(settings);

    private List<ExchangeEntry> load(String json) {
        List<ExchangeEntry> entries = section.read(EntryJson.read(json), new SetFacts());
        if (entries.stream().allMatch(entry -> entry.troubles().isEmpty())) {
            book.write("Load", transaction -> {
                entries.forEach(entry -> entry.write(transaction));
                return 0;
            });
        }
        return entries;
    }

    @Test
    void areUnsetUntilSomebodySetsThem() {
        assertThat(settings.rules()).isEqualTo(CostRules.unset());
        assertThat(section.dump().isMissingNode()).isTrue();
    }

    @Test
    void comeBackFromAFileAsTheyWentIn() {
        load(FULL);
        CostRules rules = settings.rules();
        assertThat(rules.prices()).containsExactly("written", "offer");
        assertThat(rules.labour().rate("sauce")).contains(new BigDecimal("16.50"));
        assertThat(rules.labour().rate("grill")).contains(new BigDecimal("15.00"));
        assertThat(rules.targetFoodCostPercent()).contains(new BigDecimal("28"));
        assertThat(rules.endings()).containsExactly(new BigDecimal("0.50"), new BigDecimal("0.95"));
        assertThat(section.dump()).isEqualTo(EntryJson.read(FULL));
    }

    @Test
    void changeInOneUndoableStepAndKeepWhatTheyDoNotKnow() {
        load(FULL);
        settings.change(settings.rules().withTarget(Optional.of(new BigDecimal("30"))));
        assertThat(section.dump()).isEqualTo(EntryJson.read(FULL.replace("\"28\"", "\"30\"")));
        book.history().undo();
        assertThat(section.dump()).isEqualTo(EntryJson.read(FULL));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            {"targetFoodCostPercent":"0"}                  | cannot be met
            {"targetFoodCostPercent":"x"}                  | not an amount
            {"endings":["1.50"]}                           | not an ending
            {"labour":{"perHour":"-3"}}                    | not an amount
            {"labour":{"stations":{"sauce":"cheap"}}}      | not an amount
            """)
    void areRefusedWhenTheyMakeNoSense(String json, String word) {
        List<ExchangeEntry> entries = load(json);
        assertThat(entries.get(0).troubles()).isNotEmpty();
        assertThat(entries.get(0).troubles().get(0).problem()).contains(word);
        assertThat(settings.rules()).isEqualTo(CostRules.unset());
    }

    @Test
    void refuseRatesAndEndingsThatCannotBe() {
        assertThatThrownBy(() -> settings.change(CostRules.unset().withEndings(List.of(BigDecimal.ONE))))
                .hasMessageContaining("less than 1");
        assertThat(settings.rules()).isEqualTo(CostRules.unset());
    }

    @Test
    void rankThePriceSourcesWithUnnamedOnesBehind() {
        Larder larder = new Larder().bought("cream", "4.00", "1 l");
        larder.recipe("sauce").uses("1 l", "cream").makes("1 l", "sauce").done();
        var offer = larder.source("offer", 10, Map.of("cream", UnitPrice.of("5.00", "1 l")));
        var paid = larder.source("last-paid", 20, Map.of("cream", UnitPrice.of("6.00", "1 l")));
        LiveCosts costs = larder.costs(offer, paid);
        assertThat(batch(costs)).isEqualByComparingTo("5");
        larder.settings.change(larder.settings.rules().withPrices(List.of("written")));
        assertThat(batch(costs)).isEqualByComparingTo("4");
        larder.settings.change(larder.settings.rules().withPrices(List.of("last-paid", "written")));
        assertThat(batch(costs)).isEqualByComparingTo("6");
        assertThat(larder.settings.with(List.of(offer, larder.written(), paid)).sources())
                .extracting(CostSettings.Source::id)
                .containsExactly("last-paid", "written", "offer");
    }

    private static BigDecimal batch(LiveCosts costs) {
        return costs.recipe("sauce").orElseThrow().batch().amount();
    }

    @Test
    void areSetAndShownOnTheConsole() throws VerbException {
        Larder larder = new Larder();
        CostingVerb verb = new CostingVerb(settings.with(List.of(larder.written())));
        verb.run(call(Map.of("--target", "28", "--endings", ".50,.95", "--labour", "on", "--station", "sauce=16.50")));
        assertThat(settings.rules().targetFoodCostPercent()).contains(new BigDecimal("28"));
        assertThat(settings.rules().labour().on()).isTrue();
        long revision = book.revision();
        assertThat(verb.run(call(Map.of())).lines())
                .contains(
                        "target food cost: 28 %",
                        "menu prices end in: .50, .95".replace(".50", "0.50").replace(".95", "0.95"));
        assertThat(book.revision()).as("showing writes nothing").isEqualTo(revision);
        assertThatThrownBy(() -> verb.run(call(Map.of("--prices", "crystal-ball"))))
                .isInstanceOf(VerbException.class)
                .hasMessageContaining("written");
    }

    private static VerbCall call(Map<String, String> options) {
        return new VerbCall(List.of(), options, "", Path.of(""), Progress.unseen());
    }
}
