package etamine.recipes.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.item.Item;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MadeItemsTest {
    private final Range range = new Range();

    private static String recipe(String id, String uses, String makes) {
        return "{\"id\": \"" + id + "\", \"name\": \"The " + id + "\", \"kind\": \"component\", \"portion\": \"70 g\","
                + " \"keeps\": \"P3D\", \"uses\": [" + uses + "], \"makes\": [" + makes + "]}";
    }

    private static String line(String item) {
        return "{\"item\": \"" + item + "\", \"quantity\": \"100 g\"}";
    }

    @Test
    void givesEachThingMadeItsNameAndMeasures() {
        range.load(recipe("breakdown", line("fowl"), line("fowl-breast") + "," + line("fowl-leg")));

        Item breast = range.made.items().get("fowl-breast");
        assertThat(breast.name()).isEqualTo("Fowl breast");
        assertThat(breast.made()).isTrue();
        assertThat(breast.dimension()).isEqualTo(Dimension.MASS);
        assertThat(breast.keeps()).isPresent();
        assertThat(breast.converter()
                        .convert(Quantity.parse("2 portion"), Dimension.MASS)
                        .orThrow())
                .isEqualTo(Quantity.parse("140 g"));
        assertThat(range.made.items().get("fowl-leg").name()).isEqualTo("Fowl leg");
        assertThat(range.made.items().get("fowl-leg").measures()).isEmpty();
    }

    @Test
    void unitesAllergensThroughTheGraph() {
        range.allergens("cream", Set.of("milk"), Set.of("nuts"), true);
        range.allergens("nuts", Set.of("nuts"), Set.of(), true);
        range.allergens("salt", Set.of(), Set.of("celery"), true);
        range.load(
                recipe("sauce", line("cream") + "," + line("salt"), line("sauce")),
                recipe("plate", line("sauce") + "," + line("nuts"), line("plate")));

        assertThat(range.made.items().get("sauce").allergens().contains()).containsExactly("milk");
        assertThat(range.made.items().get("sauce").allergens().mayContain())
                .containsExactlyInAnyOrder("nuts", "celery");
        assertThat(range.made.items().get("plate").allergens().contains()).containsExactlyInAnyOrder("milk", "nuts");
        assertThat(range.made.items().get("plate").allergens().mayContain()).containsExactly("celery");
        assertThat(range.made.items().get("plate").allergens().known()).isTrue();
    }

    @Test
    void knowsAllergensOnlyWhenTheyAreKnownOfEverything() {
        range.allergens("cream", Set.of("milk"), Set.of(), true);
        range.allergens("paste", Set.of(), Set.of(), false);
        range.load(
                recipe("sauce", line("cream") + "," + line("paste"), line("sauce")),
                recipe("plate", line("sauce"), line("plate")),
                recipe("other", line("cream") + "," + line("stranger"), line("other")));

        assertThat(range.made.items().get("plate").allergens().known()).isFalse();
        assertThat(range.made.items().get("plate").allergens().contains()).containsExactly("milk");
        assertThat(range.made.items().get("other").allergens().known()).isFalse();
    }

    @Test
    void unitesAllergensOfAllWaysToMakeAThing() {
        range.allergens("cream", Set.of("milk"), Set.of(), true);
        range.allergens("egg", Set.of("egg"), Set.of(), true);
        range.load(
                recipe("a", line("cream"), line("mousse")),
                recipe("b", line("egg"), line("mousse")),
                recipe("plate", line("mousse"), line("plate")));

        assertThat(range.made.items().get("mousse").allergens().contains()).containsExactlyInAnyOrder("egg", "milk");
        assertThat(range.made.items().get("plate").allergens().contains()).containsExactlyInAnyOrder("egg", "milk");
    }

    @Test
    void givesTheSameSnapshotUntilSomethingChanges() {
        range.load(recipe("a", line("cream"), line("a")));
        Map<String, Item> before = range.made.items();

        assertThat(range.made.items()).isSameAs(before);
        range.allergens("cream", Set.of("milk"), Set.of(), true);
        assertThat(range.made.items()).isNotSameAs(before);
    }
}
