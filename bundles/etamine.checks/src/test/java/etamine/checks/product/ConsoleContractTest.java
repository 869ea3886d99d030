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
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the console promises in docs/exchange.md, on a small book with faults in it: saffron has no price, and the only
 * cream on hand is past its day. The clock stands at Tuesday 2026-11-24, 10:00.
 */
class ConsoleContractTest {
    private static final String AMOUNT = "-?[0-9]+(\\.[0-9]+)?";

    @TempDir
    static Path folder;

    private static Suite suite;
    private static ConsoleFront console;

    @BeforeAll
    static void start() throws Exception {
        suite = new Suite(folder, List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering"));
        console = new ConsoleFront(suite, folder);
        try (InputStream hook = Objects.requireNonNull(ConsoleContractTest.class.getResourceAsStream("hook.json"))) {
            Files.copy(hook, folder.resolve("hook.json"));
        }
        Files.writeString(folder.resolve("count.csv"), "item;place;quantity\nleek;walk-in;7.5 kg\n");
        Files.writeString(folder.resolve("bad.csv"), "item;place;quantity\nghost;walk-in;7.5 kg\n");
        Files.writeString(folder.resolve("bad.json"), "{\"etamine\": \"1\", \"recipes\": [7]}");
    }

    @AfterAll
    static void stop() {
        suite.close();
    }

    @BeforeEach
    void laysOutTheBook() throws Exception {
        for (String part : List.of("", "-wal", "-shm")) {
            Files.deleteIfExists(folder.resolve("book" + part));
        }
        Said said = console.say("load", "hook.json", "--json");
        assertThat(said.status()).as(said.err()).isZero();
        assertThat(said.json().at("/accepted/recipes").asInt()).isEqualTo(3);
        assertThat(said.json().at("/rejected").isEmpty()).isTrue();
        assertThat(said.json().at("/kept").isEmpty()).isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            --book new1 new                       | 0 | /book
            --book demo1 demo                     | 0 | /book
            dump out.json                         | 0 | /file /sections/recipes
            cost leek-soup                        | 0 | /currency /recipes/0/id /recipes/0/batchCost /recipes/0/makes/0/item /recipes/0/makes/0/quantity /recipes/0/makes/0/unitCost/amount /recipes/0/makes/0/unitCost/per /recipes/0/portionCost /recipes/0/missing /recipes/0/warnings /recipes/0/lines/0/item /recipes/0/lines/0/quantity /recipes/0/lines/0/asPurchased /recipes/0/lines/0/unitPrice /recipes/0/lines/0/cost /recipes/0/lines/0/source
            cost plate-soup                       | 0 | /recipes/0/plateCost /recipes/0/netPrice /recipes/0/foodCostPercent /recipes/0/contribution
            cost                                  | 1 | /recipes/2/missing/0
            moved --since 2026-11-01              | 0 | /since /prices /plates
            whatif price:leek=+14%                | 0 | /plates/0/recipe /plates/0/now/plateCost /plates/0/then/contribution /plates/0/change /notes /accepted
            costing                               | 0 | /prices/0 /labour/on /endings
            costing --target 28                   | 0 | /targetFoodCostPercent
            scale leek-soup --to 3_kg             | 0 | /factor /uses/0/item /uses/0/quantity /makes/0/item /makes/0/quantity /batches
            scale plate-soup --covers 30          | 0 | /factor /uses/0/quantity /makes/0/quantity /batches
            stock                                 | 0 | /items/0/item /items/0/onHand /items/0/onOrder /items/0/par /items/0/short /items/0/value /items/0/lots/0/quantity /totalValue
            stock --at 2026-11-21T12:00:00Z       | 0 | /items/0/onHand /totalValue
            count count.csv                       | 0 | /movements/0/id /movements/0/kind /movements/0/item /movements/0/quantity
            waste leek 1_kg --reason frost        | 0 | /movements/0/quantity /movements/0/reason
            make leek-soup 1                      | 0 | /movements/0/kind /movements/1/item
            plan                                  | 1 | /total /bound /gapPercent /method /byHand/total /orders/0/supplier /orders/0/deliver /orders/0/orderBy /orders/0/goods /orders/0/fee /orders/0/lines/0/item /orders/0/lines/0/code /orders/0/lines/0/packs /orders/0/lines/0/pack /orders/0/lines/0/price /orders/0/lines/0/amount /orders/0/lines/0/why/0 /shortfalls /expectedWaste
            plan --from 2026-11-25 --days 3 --method par | 0 | /method
            order                                 | 1 | /orders/0/id /orders/0/supplier /orders/0/files
            order --issue                         | 1 | /orders/0/files/0 /orders/0/files/1
            check                                 | 1 | /problems/0/code /problems/0/severity /problems/0/where /problems/0/text
            backup copy1                          | 0 | /file
            modules                               | 0 | /modules/0/id /modules/0/version /modules/0/state /modules/0/needs
            modules list                          | 0 | /modules/0/id
            items                                 | 0 | /items/0/id /items/0/allergensKnown
            recipes                               | 0 | /recipes/0/id
            recipe leek-soup                      | 0 | /recipe/id
            suppliers                             | 0 | /suppliers/0/id
            offers leek                           | 0 | /offers/0/unitPrice/amount
            covers                                | 0 | /covers/0/covers
            sales                                 | 0 | /sales/0/sold
            pars                                  | 0 | /pars/0/par
            orders                                | 0 | /orders/0/id
            today                                 | 0 | /calls
            find leek                             | 0 | /found/0/id
            kitchen                               | 0 | /kitchen/currency
            schema schema.json                    | 0 | /file
            """)
    void answersWithItsMembers(String line, int status, String members) throws Exception {
        Said said = console.say(words(line + " --json"));
        assertThat(said.status()).as(said.err()).isEqualTo(status);
        JsonNode json = said.json();
        for (String member : members.split(" ")) {
            assertThat(json.at(member).isMissingNode())
                    .as("%s in %s", member, json)
                    .isFalse();
        }
        assertNumbersAreText(json, "");
    }

    /** 1 kg of sliced leek takes 2 kg at 2.00; half a litre of cream is a twelfth of a case at 24.00. */
    @Test
    void reckonsTheCostsThatCanBeReckonedByHand() throws Exception {
        JsonNode soup = console.say("cost", "leek-soup", "--json").json().at("/recipes/0");
        assertThat(decimal(soup, "/batchCost")).isEqualByComparingTo("6.00");
        assertThat(soup.at("/lines/0/asPurchased").asText()).isEqualTo("2000 g");
        assertThat(decimal(soup, "/lines/1/cost")).isEqualByComparingTo("2.00");
        assertThat(decimal(soup, "/portionCost")).isEqualByComparingTo("0.80"); // (6.00 - 0.40) / 1.4 kg x 200 g
        JsonNode plate = console.say("cost", "plate-soup", "--json").json().at("/recipes/0");
        assertThat(decimal(plate, "/plateCost")).isEqualByComparingTo("0.84");
        assertThat(decimal(plate, "/netPrice")).isEqualByComparingTo("10.00"); // 11.35 / 1.135
        assertThat(decimal(plate, "/foodCostPercent")).isEqualByComparingTo("8.4");
        assertThat(decimal(plate, "/contribution")).isEqualByComparingTo("9.16");
    }

    /** 2 l x 4.10 + (4 + 5 - 1) kg x 2.00. */
    @Test
    void reckonsTheShelfThatCanBeReckonedByHand() throws Exception {
        JsonNode stock = console.say("stock", "--json").json();
        assertThat(decimal(stock, "/totalValue")).isEqualByComparingTo("24.20");
        assertThat(console.say("stock", "--at", "2026-11-20T12:00:00Z", "--json")
                        .json()
                        .at("/totalValue")
                        .asText())
                .isEqualTo("16.20");
    }

    @Test
    void thePlanAddsUp() throws Exception {
        JsonNode plan = console.say("plan", "--json").json();
        BigDecimal total = BigDecimal.ZERO;
        for (JsonNode order : plan.path("orders")) {
            BigDecimal goods = BigDecimal.ZERO;
            for (JsonNode line : order.path("lines")) {
                BigDecimal amount = decimal(line, "/amount");
                assertThat(decimal(line, "/price")
                                .multiply(new BigDecimal(line.path("packs").asInt())))
                        .isEqualByComparingTo(amount);
                goods = goods.add(amount);
            }
            assertThat(decimal(order, "/goods")).isEqualByComparingTo(goods);
            total = total.add(goods).add(decimal(order, "/fee"));
        }
        assertThat(total).isPositive().isEqualByComparingTo(decimal(plan, "/total"));
        assertThat(plan.path("byHand").path("total").asText())
                .isEqualTo(plan.path("total").asText());
        assertThat(plan.path("bound").isNull())
                .as("only the best method has a bound")
                .isTrue();
    }

    @Test
    void anIssuedOrderIsWrittenAndCanBeReceived() throws Exception {
        JsonNode orders = console.say("order", "--issue", "--json").json().path("orders");
        assertThat(orders).isNotEmpty();
        for (JsonNode order : orders) {
            List<String> files = Stream.of(order.at("/files/0"), order.at("/files/1"))
                    .map(JsonNode::asText)
                    .toList();
            assertThat(files).anyMatch(file -> file.endsWith(".csv")).anyMatch(file -> file.endsWith(".pdf"));
            for (String file : files) {
                assertThat(Path.of(file)).isNotEmptyFile();
            }
            Said received = console.say("receive", order.path("id").asText(), "--json");
            assertThat(received.status()).as(received.err()).isZero();
            assertThat(received.json().path("movements")).hasSameSizeAs(order.path("lines"));
        }
    }

    @Test
    void aBackupIsRestoredWhereNoBookIs() throws Exception {
        console.say("backup", "copy2");
        Said restored = console.say("--book", "again", "restore", "copy2", "--json");
        assertThat(restored.status()).as(restored.err()).isZero();
        assertThat(restored.json().path("book").asText())
                .isEqualTo(folder.resolve("again").toString());
        console.say("dump", "one.json");
        console.say("--book", "again", "dump", "two.json");
        assertThat(folder.resolve("two.json")).hasSameTextualContentAs(folder.resolve("one.json"));
        assertThat(console.say("restore", "copy2", "--json").status())
                .as("never over another book")
                .isEqualTo(2);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            fry                         | 2 | There is no verb fry
            cost ghost                  | 2 | ghost
            cost --sideways             | 2 | --sideways
            moved --since yesterday     | 2 | yesterday
            whatif cheaper              | 2 | menu:
            whatif yield:leek/sliced=0 --accept | 2 | more than 0
            costing --prices ghost      | 2 | ghost
            scale leek-soup             | 2 | --covers
            scale leek-soup --to 3_blob | 2 | blob
            scale leek-soup --vessels 12_blobs | 2 | blob
            plan --method best          | 2 | later version
            plan --method guess         | 2 | guess
            plan --days no              | 2 | no
            plan --from 2026-13-01      | 2 | 2026-13-01
            modules install x.jar       | 2 | later version
            modules remove x            | 2 | later version
            modules start ghost         | 2 | ghost
            stock --at noon             | 2 | noon
            load nothing.json           | 2 | nothing.json
            load bad.json               | 3 | /recipes/0
            count bad.csv               | 3 | ghost
            waste leek 3_cup            | 3 | cup
            waste ghost 1_kg            | 3 | ghost
            make ghost 1                | 3 | ghost
            receive ghost               | 3 | ghost
            new                         | 2 | book
            demo                        | 2 | book
            restore nothing             | 2 | nothing
            --book none stock           | 2 | none
            --book                      | 2 | --book
            """)
    void refusesWithAStatusAndASentence(String line, int status, String word) throws Exception {
        console.say("dump", "before.json");
        Said plain = console.say(words(line));
        assertThat(plain.status()).as(plain.err()).isEqualTo(status);
        assertThat(plain.out()).isEmpty();
        assertThat(plain.err()).containsIgnoringCase(word);
        Said json = console.say(words(line + " --json"));
        assertThat(json.status()).isEqualTo(status);
        assertThat(json.json().isObject()).isTrue();
        assertThat(json.out() + json.err()).containsIgnoringCase(word);
        console.say("dump", "after.json");
        assertThat(folder.resolve("after.json")).hasSameTextualContentAs(folder.resolve("before.json"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"items", "stock", "plan", "check", "modules"})
    void quietPrintsNothingAtAll(String verb) throws Exception {
        Said said = console.say(verb, "--quiet");
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).isEmpty();
    }

    /** Every amount of money and every quantity is text, so that nobody's parser rounds it. */
    private static void assertNumbersAreText(JsonNode node, String name) {
        if (node.isObject()) {
            node.properties().stream()
                    .filter(member -> !member.getKey().equals("sections")) // how many entries each has
                    .forEach(member -> assertNumbersAreText(member.getValue(), member.getKey()));
        }
        if (node.isArray()) {
            node.forEach(element -> assertNumbersAreText(element, name));
        }
        assertThat(node.isFloat() || node.isDouble()).as("%s: %s", name, node).isFalse();
        if (node.isValueNode() && !node.isNull()) {
            switch (name) {
                case "cost",
                        "batchCost",
                        "portionCost",
                        "plateCost",
                        "netPrice",
                        "contribution",
                        "foodCostPercent",
                        "amount",
                        "goods",
                        "fee",
                        "total",
                        "totalValue",
                        "value" ->
                    assertThat(node.isTextual() && node.asText().matches(AMOUNT))
                            .as("%s: %s", name, node)
                            .isTrue();
                case "quantity", "onHand", "onOrder", "par", "short", "asPurchased", "per", "pack" ->
                    assertThat(node.isTextual() && node.asText().matches("-?[0-9].* \\S+"))
                            .as("%s: %s", name, node)
                            .isTrue();
                default -> {}
            }
        }
    }

    private static BigDecimal decimal(JsonNode json, String pointer) {
        return new BigDecimal(json.at(pointer).asText());
    }

    /** Words parted by blanks; a low line stands for a blank within one. */
    private static String[] words(String line) {
        return Stream.of(line.split(" +")).map(word -> word.replace('_', ' ')).toArray(String[]::new);
    }
}
