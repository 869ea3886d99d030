package etamine.book.internal.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.base.Progress;
import etamine.kitchen.exchange.Exchange.LoadTerms;
import etamine.kitchen.exchange.LoadResult;
import etamine.kitchen.exchange.LoadResult.Rejected;
import etamine.storage.Document;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Entries that are wrong: every one is listed with its place, and only {@code accept-good} writes the others. */
class BadEntryTest {
    @TempDir
    Path folder;

    private final VolatileBook book = new VolatileBook();
    private final BookExchange exchange =
            new BookExchange(book, List.of(new Pantry(book, "pantry"), new Pantry(book, "cellar")));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"id": "a", "price": {"amount": "-1", "per": "1 kg"}} | /pantry/0/price/amount | It cannot be less than zero.
            {"id": "a", "price": {"amount": 2.10, "per": "1 kg"}} | /pantry/0/price/amount | Write this number in quotes: "2.10".
            {"id": "a", "price": {"amount": "2.10"}}              | /pantry/0/price        | Add "per" here.
            {"id": "a", "amount": "250"}                          | /pantry/0/amount       | A quantity is an amount, a space and a unit
            {"id": "a", "amount": "2 smidgen"}                    | /pantry/0/amount       | The unit smidgen is unknown
            {"id": "a b"}                                         | /pantry/0/id           | An identifier: 1 to 80 letters
            {"name": "a"}                                         | /pantry/0              | Add "id" here.
            {"name": "a", "id": "a"}                              | /pantry/0/name         | Nothing here is called "name"
            {"id": "a", "prcie": {}}                              | /pantry/0/prcie        | write "price"
            {"id": "a", "kind": "warm"}                           | /pantry/0/kind         | Write one of dry, cold instead of "warm".
            {"id": "a", "tested": -1}                             | /pantry/0/tested       | Write a number of at least 0.
            {"id": "a", "tested": "1"}                            | /pantry/0/tested       | Write a whole number instead of "1".
            {"id": "a", "since": "2026-02-30"}                    | /pantry/0/since        | A date is written year-month-day
            {"id": "a", "from": ["b"]}                            | /pantry/0/from/0       | There is no b; add it.
            {"id": "a", "from": ["a"]}                            | /pantry/0/from         | This goes in a circle: a > a.
            {"id": "a", "from": ["a","b","c","d"]}                | /pantry/0/from         | Give at most 3 here.
            7                                                     | /pantry/0              | Write an object in { } instead of 7.
            null                                                  | /pantry/0              | Write an object in { } instead of null.
            """)
    void saysWhereAndWhatToDo(String entry, String pointer, String problem) throws IOException {
        LoadResult result = load("{\"etamine\": \"1\", \"pantry\": [" + entry + "]}", LoadTerms.strict());
        assertThat(result.written()).isFalse();
        assertThat(result.rejected()).anySatisfy(rejected -> {
            assertThat(rejected.pointer()).isEqualTo(pointer);
            assertThat(rejected.problem()).contains(problem);
        });
        assertThat(book.revision()).isZero();
    }

    @Test
    void refusesASectionOfTheWrongShapeAsAWhole() throws IOException {
        LoadResult result = load("{\"etamine\": \"1\", \"pantry\": {\"id\": \"a\"}}", LoadTerms.strict());
        assertThat(result.rejected()).extracting(Rejected::pointer).containsExactly("/pantry");
    }

    @Test
    void refusesASectionThatIsNearlyAKnownOne() throws IOException {
        LoadResult result =
                load("{\"etamine\": \"1\", \"larder\": 1, \"pantyr\": [], \"x-pantry\": []}", LoadTerms.strict());
        assertThat(result.rejected()).extracting(Rejected::pointer).containsExactly("/pantyr");
        assertThat(result.rejected().get(0).problem()).contains("write \"pantry\"");
        assertThat(result.kept()).containsOnlyKeys("larder", "x-pantry");
    }

    @Test
    void reportsADuplicateIdAtTheLaterEntry() throws IOException {
        LoadResult result = load(
                "{\"etamine\": \"1\", \"pantry\": [{\"id\": \"a\"}, {\"id\": \"b\"}, {\"id\": \"a\"}]}",
                LoadTerms.strict());
        assertThat(result.rejected()).hasSize(1);
        assertThat(result.rejected().get(0).pointer()).isEqualTo("/pantry/2");
        assertThat(result.rejected().get(0).problem()).startsWith("Duplicate id: \"a\"");
    }

    @Test
    void listsEveryProblemInTheOrderOfTheFile() throws IOException {
        LoadResult result = load("""
                {"etamine": "1",
                 "pantry": [{"id": "a", "from": ["ghost"]}, {"id": "b", "amount": "x"}, {"id": "c"}],
                 "cellar": [{"id": "d", "tested": -1}]}
                """, LoadTerms.strict());
        assertThat(result.rejected())
                .extracting(Rejected::pointer)
                .containsExactly("/pantry/0/from/0", "/pantry/1/amount", "/cellar/0/tested");
        assertThat(result.accepted()).containsEntry("pantry", 1).containsEntry("cellar", 0);
    }

    @Test
    void acceptGoodTakesOutWhatRestsOnWhatWasTakenOut() throws IOException {
        LoadResult result = load("""
                {"etamine": "1", "pantry": [
                  {"id": "stock", "amount": "2 smidgen"},
                  {"id": "sauce", "from": ["stock"]},
                  {"id": "plate", "from": ["sauce"]},
                  {"id": "salt"}]}
                """, LoadTerms.good());
        assertThat(result.written()).isTrue();
        assertThat(result.accepted()).isEqualTo(Map.of("pantry", 1));
        assertThat(result.rejected())
                .extracting(Rejected::pointer)
                .containsExactly("/pantry/0/amount", "/pantry/1/from/0", "/pantry/2/from/0");
        assertThat(book.shelf("pantry").all()).extracting(Document::id).containsExactly("salt");
        assertThat(book.revision()).isEqualTo(1);
    }

    @Test
    void filesTheRejectedSoThatTheyCanBeMendedAndLoaded() throws IOException {
        LoadResult result = load(
                "{\"etamine\": \"1\", \"pantry\": [{\"id\": \"salt\"}, {\"id\": \"oil\", \"amount\": \"1 jug\"}]}",
                LoadTerms.good());
        Path filed = folder.resolve("kitchen.rejected.json");
        assertThat(result.filed()).containsExactly(filed);
        JsonNode content = Json.parse(Files.readString(filed));
        assertThat(content.at("/rejected/0/pointer").asText()).isEqualTo("/pantry/1/amount");
        assertThat(content.at("/rejected/0/problem").asText()).contains("jug");
        assertThat(content.at("/rejected/0/entry/id").asText()).isEqualTo("oil");

        Files.writeString(filed, Files.readString(filed).replace("1 jug", "1 l"));
        LoadResult again = exchange.load(List.of(filed), LoadTerms.strict(), Progress.unseen());
        assertThat(again.written()).isTrue();
        assertThat(again.kept()).isEmpty();
        assertThat(book.shelf("pantry").all()).extracting(Document::id).containsExactly("oil", "salt");
    }

    @Test
    void acceptGoodWithNothingGoodWritesNothing() throws IOException {
        LoadResult result = load("{\"etamine\": \"1\", \"pantry\": [{\"id\": \"\"}]}", LoadTerms.good());
        assertThat(result.written()).isFalse();
        assertThat(folder.resolve("kitchen.rejected.json")).doesNotExist();
    }

    @Test
    void aFileMayReferToTheBook() throws IOException {
        load("{\"etamine\": \"1\", \"pantry\": [{\"id\": \"salt\"}]}", LoadTerms.strict());
        assertThat(load(
                                "{\"etamine\": \"1\", \"pantry\": [{\"id\": \"brine\", \"from\": [\"salt\"]}]}",
                                LoadTerms.strict())
                        .written())
                .isTrue();
    }

    @Test
    void severalFilesAreOneAndPointersLeadIntoTheRightOne() throws IOException {
        Path first = Files.writeString(
                folder.resolve("1.json"),
                "{\"etamine\": \"1\", \"pantry\": [{\"id\": \"brine\", \"from\": [\"salt\"]}]}");
        Path second = Files.writeString(
                folder.resolve("2.json"),
                "{\"etamine\": \"1\", \"pantry\": [{\"id\": \"salt\"}, {\"id\": \"brine\"}]}");
        LoadResult result = exchange.load(List.of(first, second), LoadTerms.strict(), Progress.unseen());
        assertThat(result.rejected()).hasSize(1);
        assertThat(result.rejected().get(0).file()).isEqualTo(second);
        assertThat(result.rejected().get(0).pointer()).isEqualTo("/pantry/1");
    }

    private LoadResult load(String text, LoadTerms terms) throws IOException {
        Path file = Files.writeString(folder.resolve("kitchen.json"), text);
        return exchange.load(List.of(file), terms, Progress.unseen());
    }
}
