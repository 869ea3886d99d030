package etamine.book.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Progress;
import etamine.book.internal.exchange.BookExchange;
import etamine.book.internal.exchange.Exchanges;
import etamine.book.internal.exchange.Json;
import etamine.kitchen.exchange.Exchange.LoadTerms;
import etamine.kitchen.exchange.LoadResult;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitchenSectionTest {
    private static final String GOOD = "{\"name\":\"Lantern\",\"currency\":\"EUR\",\"zone\":\"Europe/Dublin\"}";

    @TempDir
    Path folder;

    private final VolatileBook book = new VolatileBook();
    private final KitchenSection section = new KitchenSection(book);
    private final BookExchange exchange = Exchanges.of(book, section);

    @Test
    void dumpsWhatItLoadedAndNothingBefore() throws IOException {
        assertThat(section.dump().isMissingNode()).isTrue();
        assertThat(load(GOOD).written()).isTrue();
        assertThat(section.dump()).isEqualTo(Json.parse(GOOD));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"name":"L","currency":"ABC","zone":"Europe/Dublin"} | /kitchen          | There is no currency ABC
            {"name":"L","currency":"eur","zone":"Europe/Dublin"} | /kitchen/currency | The three-letter code
            {"name":"L","currency":"EUR","zone":"Europe/Nowhere"} | /kitchen          | There is no time zone Europe/Nowhere
            {"name":" ","currency":"EUR","zone":"Europe/Dublin"} | /kitchen/name     | not only blanks
            {"name":"L","currency":"EUR","zone":"UTC","measures":"troy"} | /kitchen/measures | metric, us
            [] | /kitchen | Write an object in { } instead of a list.
            """)
    void saysWhatIsWrong(String kitchen, String pointer, String problem) throws IOException {
        LoadResult result = load(kitchen);
        assertThat(result.written()).isFalse();
        assertThat(result.rejected().get(0).pointer()).isEqualTo(pointer);
        assertThat(result.rejected().get(0).problem()).contains(problem);
    }

    @Test
    void takesAnotherCurrencyWhileNothingButTheSettingsWasWritten() throws IOException {
        load(GOOD);
        assertThat(load(GOOD.replace("EUR", "USD")).written()).isTrue();
        assertThat(section.dump().get("currency").asText()).isEqualTo("USD");
    }

    @Test
    void refusesAnotherCurrencyThanTheBooks() throws IOException {
        load(GOOD);
        book.write("Add cream", change -> change.save("ingredients", "cream", 0, "{}"));
        LoadResult result = load(GOOD.replace("EUR", "USD"));
        assertThat(result.rejected()).extracting(LoadResult.Rejected::pointer).containsExactly("/kitchen/currency");
        assertThat(result.rejected().get(0).problem()).contains("keeps its prices in EUR");
    }

    @Test
    void standsInOneFileOnly() throws IOException {
        Path first = file("1.json", GOOD);
        Path second = file("2.json", GOOD);
        LoadResult result = exchange.load(List.of(first, second), LoadTerms.strict(), Progress.unseen());
        assertThat(result.rejected()).extracting(LoadResult.Rejected::file).containsExactly(second);
    }

    private LoadResult load(String kitchen) throws IOException {
        return exchange.load(List.of(file("k.json", kitchen)), LoadTerms.strict(), Progress.unseen());
    }

    private Path file(String name, String kitchen) throws IOException {
        return Files.writeString(folder.resolve(name), "{\"etamine\": \"1\", \"kitchen\": " + kitchen + "}");
    }
}
