package etamine.diary.internal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Unit;
import etamine.storage.Book;
import etamine.testing.SetFacts;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DiarySectionsTest {
    private final VolatileBook book = new VolatileBook();

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            covers | [{"date":"2026-11-27","covers":52},{"date":"2026-11-28","covers":0,"note":"wedding"}]
            mix    | [{"recipe":"plate-cod","perCover":"1/3"},{"recipe":"plate-fowl","perCover":"0.22","x":1.5}]
            sales  | [{"date":"2026-11-20","recipe":"a","sold":3},{"date":"2026-11-20","recipe":"b","sold":11}]
            use    | [{"date":"2026-11-27","item":"cream","quantity":"3 l"}]
            """)
    void dumpsWhatItLoaded(String name, String json) throws IOException {
        JsonNode section = new ObjectMapper().readTree(json);
        load(book, name, section);

        JsonNode dump = section(book, name).dump();
        assertThat(dump).hasToString(json);

        VolatileBook other = new VolatileBook();
        load(other, name, dump);
        assertThat(section(other, name).dump()).hasToString(json);
    }

    @ParameterizedTest
    @ValueSource(strings = {"covers", "mix", "sales", "use"})
    void dumpsNothingWhenThereIsNothing(String name) {
        assertThat(section(book, name).dump().isMissingNode()).isTrue();
    }

    @Test
    void loadingSalesTwiceDoesNotCountThemTwice() throws IOException {
        JsonNode section = new ObjectMapper().readTree("[{\"date\":\"2026-11-20\",\"recipe\":\"a\",\"sold\":3}]");
        load(book, "sales", section);
        load(book, "sales", section);

        assertThat(section(book, "sales").dump()).hasToString(section.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            covers | {"date":"27.11.2026","covers":52}                        | date
            covers | {"date":"2026-11-27","covers":-1}                        | covers
            mix    | {"recipe":"plate-fowl","perCover":"some"}                | some
            mix    | {"recipe":"plate-fowl","perCover":"-1"}                  | perCover
            sales  | {"date":"2026-11-20","recipe":"a","sold":-3}             | sold
            use    | {"date":"2026-11-27","item":"cream","quantity":"3"}      | unit
            use    | {"date":"2026-11-27","item":"cream","quantity":"-3 l"}   | quantity
            """)
    void saysWhatIsWrongWithAnEntryAndKeepsItsPointer(String name, String entry, String word) throws IOException {
        JsonNode section = new ObjectMapper().readTree("[null," + entry + "]");
        List<ExchangeEntry> entries = section(book, name).read(section, new SetFacts());

        assertThat(entries).hasSize(1);
        assertThat(entries.get(0).pointer()).isEqualTo("/1");
        assertThat(entries.get(0).troubles()).hasSize(1);
        assertThat(entries.get(0).troubles().get(0).problem()).contains(word).endsWith(".");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            mix   | {"recipe":"plate-x","perCover":"0.2"}                | /recipe
            sales | {"date":"2026-11-20","recipe":"plate-x","sold":3}    | /recipe
            use   | {"date":"2026-11-27","item":"nothing","quantity":"3 l"} | /item
            use   | {"date":"2026-11-27","item":"cream","quantity":"3 ea"} | /quantity
            """)
    void checksReferencesOnlyWhereSomebodyKnowsThem(String name, String entry, String pointer) throws IOException {
        JsonNode section = new ObjectMapper().readTree("[" + entry + "]");
        ExchangeEntry read = section(book, name).read(section, new SetFacts()).get(0);
        SetFacts facts = SetFacts.covering(Recipe.class, Item.class);
        facts.put(Item.class, "cream", cream());

        assertThat(read.check(new SetFacts())).isEmpty();
        assertThat(read.check(facts)).extracting(ExchangeEntry.Trouble::pointer).containsExactly(pointer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"covers", "mix", "sales", "use"})
    void bringsASchemaThatStandsByItself(String name) throws IOException {
        assertThat(new ObjectMapper()
                        .readTree(section(book, name).schema())
                        .path("$defs")
                        .has("quantity"))
                .isTrue();
    }

    private static Item cream() {
        return new Item(
                "cream",
                "Cream",
                "",
                false,
                "chilled",
                Optional.empty(),
                Unit.L,
                List.of(),
                List.of(),
                Allergens.unknown(),
                Optional.empty());
    }

    private static void load(Book book, String name, JsonNode json) {
        SetFacts facts = new SetFacts();
        List<ExchangeEntry> entries = section(book, name).read(json, facts);
        assertThat(entries).hasSize(json.size()).allSatisfy(entry -> {
            assertThat(entry.troubles()).isEmpty();
            assertThat(entry.check(facts)).isEmpty();
        });
        book.write("load", transaction -> {
            entries.forEach(entry -> entry.write(transaction));
            return entries.size();
        });
    }

    private static ExchangeSection section(Book book, String name) {
        return switch (name) {
            case "covers" -> new CoversSection(book);
            case "mix" -> new MixSection(book);
            case "use" -> new UseSection(book);
            default -> new SalesSection(new ShelfDiary(book));
        };
    }
}
