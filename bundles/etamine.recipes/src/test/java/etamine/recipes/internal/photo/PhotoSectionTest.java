package etamine.recipes.internal.photo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Problem;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.recipes.internal.Range;
import etamine.testing.SetFacts;
import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;

class PhotoSectionTest {
    private static final String SOUP = "{\"id\": \"soup\", \"name\": \"Soup\", \"makes\": [{\"item\": \"soup\","
            + " \"quantity\": \"1 kg\"}], \"uses\": [{\"item\": \"leek\", \"quantity\": \"1 kg\"}],"
            + " \"photo\": \"bowl\"}";

    private final Range range = new Range();
    private final GivenPhotos given = new GivenPhotos(range);

    private ObjectNode entry() {
        ObjectNode entry = (ObjectNode) Range.json("{\"id\": \"bowl\", \"type\": \"image/jpeg\", \"x-by\": \"me\"}");
        Range other = new Range();
        GivenPhotos from = new GivenPhotos(other);
        other.item("leek", "kg");
        other.load(SOUP);
        from.photos.attach("soup", GivenPhotos.file(Color.RED), "A bowl");
        JsonNode dumped = from.section.dump().get(0);
        return entry.put("data", dumped.get("data").asText()).put("width", 60).put("height", 40);
    }

    private List<ExchangeEntry> read(ObjectNode entry, SetFacts facts) {
        given.section.recall(facts);
        return given.section.read(entry.arrayNode().add(entry), facts);
    }

    private List<Trouble> troubles(ObjectNode entry) {
        return read(entry, new SetFacts()).get(0).troubles();
    }

    private void load(ObjectNode entry) {
        List<ExchangeEntry> entries = read(entry, new SetFacts());
        range.book.write("Load", transaction -> {
            entries.forEach(each -> each.write(transaction));
            return 0;
        });
    }

    @Test
    void givesBackEntriesAsTheyCameWithMembersNobodyKnows() {
        assertThat(given.section.dump().isMissingNode()).isTrue();
        ObjectNode entry = entry();
        assertThat(troubles(entry)).isEmpty();
        load(entry);
        assertThat(given.section.dump()).isEqualTo(entry.arrayNode().add(entry));
    }

    @Test
    void refusesWhatIsNoPictureWithItsPlace() {
        assertThat(troubles(entry().put("data", "%%%"))).singleElement().satisfies(trouble -> {
            assertThat(trouble.pointer()).isEqualTo("/data");
            assertThat(trouble.problem()).contains("base64");
        });
        assertThat(troubles(entry().put("data", "aGVsbG8=")))
                .singleElement()
                .satisfies(trouble -> assertThat(trouble.problem()).contains("no JPEG"));
        assertThat(troubles(entry().put("width", 61))).singleElement().satisfies(trouble -> {
            assertThat(trouble.pointer()).isEqualTo("/width");
            assertThat(trouble.problem()).contains("60");
        });
    }

    @Test
    void doubtsPhotosThatNoRecipeNamesAndNamesWithoutPhoto() {
        range.item("leek", "kg");
        SetFacts facts = new SetFacts();
        assertThat(read(entry(), facts).get(0).doubts(facts)).hasSize(1);
        range.section.read(Range.json("[" + SOUP + "]"), facts);
        assertThat(read(entry(), facts).get(0).doubts(facts)).isEmpty();

        SetFacts without = new SetFacts();
        given.section.recall(without);
        without.put(
                etamine.recipes.internal.NamedPhotos.Known.class,
                "other",
                new etamine.recipes.internal.NamedPhotos.Known("other"));
        assertThat(range.section
                        .read(Range.json("[" + SOUP + "]"), without)
                        .get(0)
                        .doubts(without))
                .extracting(Trouble::pointer)
                .contains("/photo");
    }

    @Test
    void isCheckedForNamesOnBothSides() {
        range.item("leek", "kg");
        range.load(SOUP);
        assertThat(given.check.check()).extracting(Problem::code).containsExactly("no-photo");
        load(entry());
        assertThat(given.check.check()).isEmpty();
        range.load(SOUP.replace("\"bowl\"", "\"plate\""));
        assertThat(range.book.shelf("photos").ids())
                .as("what the former recipe named went with it")
                .isEmpty();
        load(entry());
        assertThat(given.check.check()).extracting(Problem::code).containsExactly("no-photo", "unused-photo");
    }
}
