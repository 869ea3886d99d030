package etamine.book.internal.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.book.internal.KitchenSection;
import etamine.testing.VolatileBook;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedSchemaTest {
    private final VolatileBook book = new VolatileBook();
    private final ObjectNode schema = PublishedSchema.of(
            List.of(new Pantry(book, "pantry"), new KitchenSection(book), new Pantry(book, "cellar")));

    @Test
    void listsTheSectionsInReadingOrder() {
        assertThat(schema.path("properties").fieldNames())
                .toIterable()
                .containsExactly("etamine", "kitchen", "cellar", "pantry");
    }

    @Test
    void hasEveryDefinitionThatIsReferredTo() {
        schema.findValuesAsText("$ref")
                .forEach(reference -> assertThat(
                                schema.at(reference.substring(1)).isMissingNode())
                        .as(reference)
                        .isFalse());
    }

    @Test
    void aWholeFormIsValidatedByIt() {
        SectionSchema whole = SectionSchema.of(schema.toString());
        assertThat(whole.troubles(Json.parse("{\"etamine\": \"1\", \"pantry\": [{\"id\": \"a\"}], \"later\": 7}")))
                .isEmpty();
        assertThat(whole.troubles(Json.parse("{\"etamine\": \"1\", \"pantry\": [{\"id\": 7}]}")))
                .singleElement()
                .satisfies(trouble -> assertThat(trouble.pointer()).isEqualTo("/pantry/0/id"));
    }

    @ParameterizedTest
    @CsvSource({
        "price, prcie, 1",
        "mayContain, mayContian, 1",
        "id, id, 0",
        "from, form, 1",
        "a, '', 1",
        "yield, shield, 2"
    })
    void countsTheStepsBetweenWords(String a, String b, int steps) {
        assertThat(Misspellings.distance(a, b)).isEqualTo(steps);
    }
}
