package etamine.book.internal.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Problem;
import etamine.base.Progress;
import etamine.kitchen.exchange.Exchange.LoadTerms;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.LoadResult;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptSectionsTest {
    private static final String FORM = """
            {"etamine": "1",
             "pantry": [{"id": "salt", "x-shelf": 1.50}],
             "cellar": [{"id": "brine", "from": ["salt"]}],
             "later": {"anything": [1, null, "two"]}}
            """;

    @TempDir
    Path folder;

    private final VolatileBook book = new VolatileBook();
    private final ExchangeSection pantry = new Pantry(book, "pantry");
    private final ExchangeSection cellar = new Pantry(book, "cellar");

    @Test
    void keepsWhatNoModuleOwnsAndDumpsItUnchanged() throws IOException {
        BookExchange exchange = new BookExchange(book, List.of(pantry));
        LoadResult result = load(exchange, FORM);
        assertThat(result.accepted()).isEqualTo(Map.of("pantry", 1));
        assertThat(result.kept()).isEqualTo(Map.of("cellar", 1, "later", 1));
        assertThat(exchange.dump()).isEqualTo(Json.parse(FORM));
    }

    @Test
    void loadOfADumpGivesAnEqualDump() throws IOException {
        BookExchange exchange = new BookExchange(book, List.of(pantry));
        load(exchange, FORM);
        Path dump = folder.resolve("dump.json");
        assertThat(exchange.dump(dump, Progress.unseen())).isEqualTo(Map.of("pantry", 1, "cellar", 1, "later", 1));
        VolatileBook other = new VolatileBook();
        BookExchange second = new BookExchange(other, List.of(new Pantry(other, "pantry")));
        second.load(List.of(dump), LoadTerms.strict(), Progress.unseen());
        Path again = folder.resolve("again.json");
        second.dump(again, Progress.unseen());
        assertThat(again).hasSameTextualContentAs(dump);
    }

    @Test
    void loadingADumpIntoItsOwnBookChangesNothing() throws IOException {
        BookExchange exchange = new BookExchange(book, List.of(pantry));
        load(exchange, FORM);
        long before = book.revision();
        load(exchange, exchange.dump().toString());
        assertThat(book.revision()).isEqualTo(before);
    }

    @Test
    void joinsKeptEntriesById() {
        JsonNode joined = KeptShelf.join(
                Json.parse("[{\"id\":\"a\",\"n\":1},{\"id\":\"b\"},7]"),
                Json.parse("[{\"id\":\"a\",\"n\":2},{\"id\":\"c\"},7]"));
        assertThat(joined).isEqualTo(Json.parse("[{\"id\":\"a\",\"n\":2},{\"id\":\"b\"},7,{\"id\":\"c\"}]"));
    }

    @Test
    void handsAKeptSectionToItsModuleWhenItComes() throws IOException {
        load(new BookExchange(book, List.of(pantry)), FORM);
        KeptSections kept = kept(pantry, cellar);
        kept.settle();
        assertThat(book.shelf("cellar").get("brine")).isPresent();
        ObjectNode dump = new BookExchange(book, List.of(pantry, cellar)).dump();
        assertThat(dump).isEqualTo(Json.parse(FORM));
        assertThat(kept.check()).extracting(Problem::code, Problem::where).containsExactly(note("later"));
        kept.close();
    }

    @Test
    void aSectionThatDoesNotFitStaysKeptAndTheCheckSaysSo() throws IOException {
        load(new BookExchange(book, List.of(pantry)), FORM.replace("[\"salt\"]", "[\"ghost\"]"));
        KeptSections kept = kept(pantry, cellar);
        kept.settle();
        assertThat(book.shelf("cellar").all()).isEmpty();
        assertThat(kept.check()).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("kept-misfit");
            assertThat(problem.where()).isEqualTo("kept/cellar");
            assertThat(problem.text()).contains("/cellar/0/from/0").contains("There is no ghost");
        });
        kept.close();
    }

    @Test
    void takesOverByItselfAMomentAfterAModuleCame() throws Exception {
        load(new BookExchange(book, List.of(pantry)), FORM);
        KeptSections kept = kept(pantry);
        kept.settle();
        assertThat(book.shelf("cellar").all()).isEmpty();
        kept.addSection(cellar);
        for (int i = 0; i < 100 && book.shelf("cellar").all().isEmpty(); i++) {
            Thread.sleep(100);
        }
        assertThat(book.shelf("cellar").get("brine")).isPresent();
        kept.close();
    }

    @Test
    void kindsThatNoModuleDeclaresAreNotChecked() {
        FactBoard board = FactBoard.of(List.of());
        assertThat(board.covers(Pantry.Thing.class)).isFalse();
        assertThat(FactBoard.of(List.of(pantry)).covers(Pantry.Thing.class)).isTrue();
    }

    private static org.assertj.core.groups.Tuple note(String name) {
        return org.assertj.core.api.Assertions.tuple("kept-section", "kept/" + name);
    }

    private KeptSections kept(ExchangeSection... sections) {
        KeptSections kept = new KeptSections(book);
        List.of(sections).forEach(kept::addSection);
        return kept;
    }

    private LoadResult load(BookExchange exchange, String text) throws IOException {
        Path file = Files.writeString(folder.resolve("kitchen.json"), text);
        LoadResult result = exchange.load(List.of(file), LoadTerms.strict(), Progress.unseen());
        assertThat(result.rejected()).isEmpty();
        return result;
    }
}
