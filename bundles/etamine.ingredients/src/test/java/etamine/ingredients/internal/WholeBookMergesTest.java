package etamine.ingredients.internal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.base.Problem;
import etamine.ingredients.Change;
import etamine.ingredients.IngredientMerges.Preview;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions;
import etamine.storage.Transaction;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WholeBookMergesTest {
    private final Pantry pantry = new Pantry();
    private final WholeBookMerges merges = new WholeBookMerges(pantry.shelf, pantry.list);
    private final List<String> rewritten = new ArrayList<>();

    @BeforeEach
    void twoNamesForOneRoot() {
        pantry.load("""
                [{"id": "celeriac", "name": "Celeriac", "countIn": "kg", "measures": [{"of": "1 ea", "is": "750 g"}],
                  "preparations": [{"name": "peeled", "yield": "0.75"}],
                  "contains": ["celery"], "allergensKnown": true, "suits": ["vegan", "vegetarian"]},
                 {"id": "root", "name": "Celery root", "countIn": "kg", "group": "Vegetables", "x-shelf": 3,
                  "measures": [{"of": "1 ea", "is": "800 g"}, {"of": "1 crate", "is": "10 kg"}],
                  "preparations": [{"name": "peeled", "yield": "0.7"},
                    {"name": "diced", "yield": "0.65", "note": "own test",
                     "tests": [{"date": "2026-11-20", "in": "1 kg", "out": "650 g", "accepted": true}]}],
                  "mayContain": ["celery", "mustard"], "allergenNames": {"mustard": "brown mustard"}, "sulphites": "4",
                  "suits": ["vegetarian"], "unsuited": ["raw"], "price": {"amount": "2.10", "per": "1 crate"}}]
                """);
        merges.modules = List.of(new Writer());
    }

    /** A module that names whatever is merged, once. */
    private final class Writer implements ItemMentions {
        @Override
        public List<Mention> of(String item) {
            return List.of(new Mention("recipe", "soup", "Soup uses " + item));
        }

        @Override
        public int rewrite(Transaction transaction, Item from, Item into) {
            if (into.name().startsWith("Egg")) {
                throw new IllegalArgumentException("3 ea cannot be said of eggs.");
            }
            rewritten.add(
                    from.id() + " to " + into.id() + " with " + into.measures().size());
            transaction.save("notes", "note-" + rewritten.size(), 0, "{}");
            return 1;
        }
    }

    @Test
    void theSurvivorGainsWhatOnlyTheOtherHas() {
        assertThat(merges.merge("root", "celeriac")).isInstanceOf(Change.Done.class);

        Item celeriac = pantry.list.find("celeriac").orElseThrow().item();
        assertThat(celeriac.measures()).extracting(Object::toString).hasSize(2);
        assertThat(celeriac.preparation("peeled").orElseThrow().yield()).hasToString("0.75");
        assertThat(celeriac.preparation("diced").orElseThrow().yield()).hasToString("0.65");
        assertThat(celeriac.group()).isEqualTo("Vegetables");
        assertThat(celeriac.writtenPrice())
                .hasValueSatisfying(price -> assertThat(price.toString()).isEqualTo("2.10 / 1 crate"));
        assertThat(pantry.list.find("celeriac").orElseThrow().yieldOf("diced").tests())
                .hasSize(1);
        assertThat(rewritten).containsExactly("root to celeriac with 2");
    }

    @Test
    void allergensAndDietsAreJoinedOnTheCarefulSide() {
        merges.merge("root", "celeriac");

        Item celeriac = pantry.list.find("celeriac").orElseThrow().item();
        assertThat(celeriac.allergens())
                .isEqualTo(new Allergens(
                        Set.of("celery"),
                        Set.of("mustard"),
                        false,
                        Map.of("mustard", "brown mustard"),
                        Optional.of(new BigDecimal("4"))));
        assertThat(celeriac.diet().suits()).containsExactly("vegetarian");
        assertThat(celeriac.diet().unsuited()).containsExactly("raw");
    }

    @Test
    void theOtherIsKeptUnlistedSoThatTheHistoryStillKnowsIt() {
        merges.merge("root", "celeriac");

        assertThat(pantry.list.find("root")).isEmpty();
        assertThat(pantry.items.find("root")).isEmpty();
        assertThat(pantry.list.freshId("Root")).isEqualTo("root-2");
        JsonNode gone = pantry.section.dump().get(1);
        assertThat(gone.path("mergedInto").asText()).isEqualTo("celeriac");
        assertThat(gone.path("x-shelf").asInt()).isEqualTo(3);
    }

    @Test
    void undoBringsBothBack() {
        JsonNode before = pantry.section.dump();
        merges.merge("root", "celeriac");

        assertThat(pantry.book.history().undo()).contains("Merge Celery root into Celeriac");

        assertThat(pantry.section.dump()).isEqualTo(before);
        assertThat(pantry.list.find("root")).isPresent();
    }

    @Test
    void aPreviewSaysWhatWouldChangeAndWritesNothing() {
        JsonNode before = pantry.section.dump();
        long revision = pantry.book.revision();

        Preview preview = merges.preview("root", "celeriac");

        assertThat(preview.problems()).isEmpty();
        assertThat(preview.mentions()).extracting(ItemMentions.Mention::id).containsExactly("soup");
        assertThat(String.join(" ", preview.remarks()))
                .contains("“peeled” is then reckoned with a yield of 0.75 instead of 0.7")
                .contains("preparations diced")
                .contains("celery; may contain mustard; rest unknown");
        assertThat(pantry.section.dump()).isEqualTo(before);
        assertThat(pantry.book.revision()).isEqualTo(revision);
        assertThat(pantry.book.shelf("notes").all()).isEmpty();
    }

    @Test
    void refusesWhatCannotBeOneAndSaysWhatToWrite() {
        pantry.load("[{\"id\": \"egg\", \"name\": \"Egg\", \"countIn\": \"ea\"}]");

        assertThat(merges.merge("egg", "celeriac")).isInstanceOf(Change.Done.class);
        pantry.book.history().undo();
        assertThat(problem(merges.merge("celeriac", "egg"))).contains("3 ea cannot be said of eggs");
        pantry.load("[{\"id\": \"milk\", \"name\": \"Milk\", \"countIn\": \"l\"}]");
        assertThat(problem(merges.merge("milk", "celeriac")))
                .contains("Milk is counted in l and Celeriac in kg")
                .contains("what 1 l weighs");
        assertThat(problem(merges.merge("milk", "milk"))).contains("two different");
        assertThat(merges.preview("milk", "celeriac").problems()).hasSize(1);
        assertThat(pantry.list.find("milk")).isPresent();
        assertThat(pantry.book.shelf("notes").all()).isEmpty();
    }

    @Test
    void whatWasMergedBeforeFollowsTheLastSurvivor() {
        pantry.load("[{\"id\": \"knob\", \"name\": \"Knob celery\", \"countIn\": \"kg\"}]");
        merges.merge("root", "knob");

        merges.merge("knob", "celeriac");

        assertThat(pantry.section.dump().findValuesAsText("mergedInto")).containsExactly("celeriac", "celeriac");
    }

    private static String problem(Change change) {
        assertThat(change).isInstanceOf(Change.Refused.class);
        return ((Change.Refused) change)
                .problems().stream().map(Problem::text).findFirst().orElseThrow();
    }
}
