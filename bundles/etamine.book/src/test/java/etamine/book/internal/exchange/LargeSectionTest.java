package etamine.book.internal.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.base.Progress;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.storage.Document;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LargeSectionTest {
    private final VolatileBook book = new VolatileBook();
    private final OneByOne pantry = new OneByOne(new Pantry(book, "pantry"));

    @TempDir
    Path folder;

    /** A section that forbids to be asked for all of it at once. */
    private record OneByOne(Pantry pantry) implements ExchangeSection {
        @Override
        public String name() {
            return pantry.name();
        }

        @Override
        public String module() {
            return pantry.module();
        }

        @Override
        public String schema() {
            return pantry.schema();
        }

        @Override
        public void recall(Facts facts) {
            pantry.recall(facts);
        }

        @Override
        public List<ExchangeEntry> read(JsonNode section, Facts facts) {
            return pantry.read(section, facts);
        }

        @Override
        public JsonNode dump() {
            throw new AssertionError("all of a large section was asked for at once");
        }

        @Override
        public boolean large() {
            return true;
        }

        @Override
        public void dumpEach(Consumer<JsonNode> entries) {
            pantry.dump().forEach(entries);
        }
    }

    @Test
    void isDumpedEntryByEntryIntoTheSameFile() throws IOException {
        save("salt", "{\"id\":\"salt\"}");
        save("pepper", "{\"id\":\"pepper\"}");
        Path whole = folder.resolve("whole.json");
        new BookExchange(book, List.of(pantry.pantry())).dump(whole, Progress.unseen());
        Path oneByOne = folder.resolve("one-by-one.json");
        assertThat(new BookExchange(book, List.of(pantry)).dump(oneByOne, Progress.unseen()))
                .isEqualTo(Map.of("pantry", 2));
        assertThat(oneByOne).hasSameTextualContentAs(whole);
    }

    @Test
    void isNotInTheFileWhenItIsEmpty() throws IOException {
        Path file = folder.resolve("empty.json");
        assertThat(new BookExchange(book, List.of(pantry)).dump(file, Progress.unseen()))
                .isEmpty();
        assertThat(file).content().isEqualToIgnoringWhitespace("{\"etamine\": \"1\"}");
    }

    @Test
    void isCheckedEntryByEntry() {
        save("salt", "{\"id\":\"salt\"}");
        save("pepper", "{\"id\":\"pepper\",\"amount\":7}");
        assertThat(new FormCheck(List.of(pantry)).check())
                .singleElement()
                .satisfies(problem -> assertThat(problem.where()).isEqualTo("pantry/pepper"));
    }

    private void save(String id, String json) {
        book.write("fill", transaction -> transaction.save("pantry", id, Document.ANY, json));
    }
}
