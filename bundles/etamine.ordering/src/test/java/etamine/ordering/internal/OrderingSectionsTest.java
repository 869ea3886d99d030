package etamine.ordering.internal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.item.Item;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Unit;
import etamine.storage.Book;
import etamine.testing.SetFacts;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderingSectionsTest {
    private static final String PAR = "{\"item\":\"cream\",\"par\":\"8 l\",\"weekdays\":{\"FR\":\"12 l\"},"
            + "\"orderAt\":\"3 l\",\"capacity\":\"20 l\"}";
    private static final String ORDER =
            "{\"id\":\"2026-W48-dairy-1\",\"supplier\":\"dairy\",\"deliver\":\"2026-11-27\","
                    + "\"orderBy\":\"2026-11-26T22:00:00Z\",\"state\":\"sent\",\"currency\":\"EUR\","
                    + "\"fee\":\"6.00\",\"note\":\"x\","
                    + "\"lines\":[{\"item\":\"cream\",\"code\":\"D-104\",\"packs\":2,\"pack\":\"6 x 1 l\","
                    + "\"packPrice\":\"24.60\","
                    + "\"amount\":\"49.20\",\"why\":[\"a reason\"]}]}";
    private static final String COMING =
            "{\"supplier\":\"dairy\",\"item\":\"cream\",\"packs\":1,\"deliver\":\"2026-11-27\"}";

    private final Bench bench = Bench.withDairy();

    @ParameterizedTest
    @CsvSource({"pars", "orders", "onOrder"})
    void dumpsWhatItLoaded(String name) throws IOException {
        String json = "[" + entry(name) + "]";
        VolatileBook book = new VolatileBook();
        load(book, name, json);
        assertThat(section(book, name).dump()).hasToString(json);
        assertThat(new ObjectMapper()
                        .readTree(section(book, name).schema())
                        .path("type")
                        .asText())
                .isEqualTo("array");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            pars    | {"item":"cream","par":"8"}                                         | /par
            pars    | {"item":"cream","par":"8 l","weekdays":{"XX":"1 l"}}                | /weekdays/XX
            pars    | {"item":"cream","par":"8 l","weekdays":{"FR":"much"}}               | /weekdays/FR
            pars    | {"item":"cream","par":"-8 l"}                                       | /par
            pars    | {"par":"8 l"}                                                       | /item
            onOrder | {"supplier":"dairy","item":"cream","packs":0,"deliver":"2026-11-27"} | /packs
            onOrder | {"supplier":"dairy","item":"cream","packs":1,"deliver":"Friday"}     | /deliver
            orders  | {"id":"a","supplier":"b","deliver":"2026-11-27","lines":[{"item":"c","packs":1,"pack":"2 l"}]} | /lines/0
            orders  | {"id":"a","supplier":"b","deliver":"2026-11-27","state":"lost","lines":[]} | /state
            """)
    void pointsAtWhatIsWrong(String name, String entry, String pointer) throws IOException {
        List<ExchangeEntry> read =
                section(bench.book, name).read(new ObjectMapper().readTree("[" + entry + "]"), new SetFacts());

        assertThat(read.get(0).troubles()).extracting(Trouble::pointer).containsExactly(pointer);
    }

    @Test
    void checksReferencesAndMeasuresOnlyWhereSomebodyKnowsThem() throws IOException {
        SetFacts facts = SetFacts.covering(Item.class, Supplier.class);
        facts.put(Item.class, "butter", SetKitchenware.item("butter", Unit.KG));

        assertThat(check("pars", PAR, new SetFacts())).isEmpty();
        assertThat(check("pars", PAR, facts)).containsExactly("/item");
        assertThat(check("pars", PAR.replace("cream", "butter"), facts))
                .containsExactlyInAnyOrder("/par", "/weekdays/FR", "/orderAt", "/capacity");
        assertThat(check("onOrder", COMING, facts)).containsExactly("/item", "/supplier");
    }

    @Test
    void showsWhatIsOnOrderWithoutAnOrderAsOneThatCanBeReceived() throws IOException {
        load(bench.book, "onOrder", "[" + COMING + "]");

        assertThat(bench.orders.onOrder())
                .extracting(line -> line.item() + " " + line.quantity() + " " + line.deliver())
                .containsExactly("cream 6 l 2026-11-27");
        assertThat(bench.orders.find("2026-11-27-dairy").orElseThrow().state()).isEqualTo(OrderState.SENT);

        bench.book.write("receive", transaction -> {
            bench.orders.received(transaction, "2026-11-27-dairy");
            return 0;
        });
        assertThat(bench.orders.onOrder()).isEmpty();
        assertThat(section(bench.book, "onOrder").dump().isMissingNode()).isTrue();
    }

    @Test
    void saysWhatIsOnOrderButCannotBeCounted() throws IOException {
        load(bench.book, "onOrder", "[" + COMING.replace("cream", "caviar") + "]");

        assertThat(bench.orders.onOrder()).isEmpty();
        assertThat(new OrderingCheck(bench.kitchen, bench.pars, bench.orders, bench.neighbours).check())
                .extracting(problem -> problem.code() + " " + problem.where())
                .containsExactly("uncounted-order onOrder/dairy/caviar/2026-11-27");
    }

    private List<String> check(String name, String entry, SetFacts facts) throws IOException {
        JsonNode json = new ObjectMapper().readTree("[" + entry + "]");
        return section(bench.book, name).read(json, facts).get(0).check(facts).stream()
                .map(Trouble::pointer)
                .toList();
    }

    private void load(Book book, String name, String json) throws IOException {
        List<ExchangeEntry> entries = section(book, name).read(new ObjectMapper().readTree(json), new SetFacts());
        assertThat(entries).allSatisfy(entry -> assertThat(entry.troubles()).isEmpty());
        book.write("load", transaction -> {
            entries.forEach(entry -> entry.write(transaction));
            return entries.size();
        });
    }

    private static String entry(String name) {
        return switch (name) {
            case "pars" -> PAR;
            case "orders" -> ORDER;
            default -> COMING;
        };
    }

    private ExchangeSection section(Book book, String name) {
        return switch (name) {
            case "pars" -> new ParsSection(book);
            case "orders" -> new OrdersSection(book, bench.kitchen);
            default -> new OnOrderSection(book);
        };
    }
}
