package etamine.recipes.internal.allergen;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Diet;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Unit;
import etamine.recipes.AllergenReasons;
import etamine.recipes.AllergenSheet;
import etamine.recipes.AllergenState;
import etamine.recipes.Rolled;
import etamine.recipes.Suitability;
import etamine.recipes.Way;
import etamine.recipes.internal.Range;
import etamine.testing.GivenItems;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RolledAllergensTest {
    private final Range range = new Range();
    private final RolledAllergens rollUp = new RolledAllergens(range::known, range.made);

    private static String recipe(String id, String makes, String... uses) {
        return "{\"id\": \"" + id + "\", \"name\": \"The " + id + "\", \"kind\": \"component\", \"uses\": ["
                + Arrays.stream(uses).collect(Collectors.joining(",")) + "], \"makes\": ["
                + Arrays.stream(makes.split(" ")).map(RolledAllergensTest::line).collect(Collectors.joining(","))
                + "]}";
    }

    private static String line(String item) {
        return "{\"item\": \"" + item + "\", \"quantity\": \"100 g\"}";
    }

    private Recipe find(String id) {
        return range.recipes.find(id).orElseThrow();
    }

    private void known(String item, String... contains) {
        range.allergens(item, Set.of(contains), Set.of(), true);
    }

    private void stockPlate() {
        known("celery-sticks", "celery");
        known("bones");
        known("cream", "milk");
        known("mussel", "mussels");
        range.load(
                recipe("fish-stock", "fish-stock", line("bones"), line("celery-sticks")),
                recipe("mussel-cream", "mussel-cream", line("fish-stock"), line("cream"), line("mussel")),
                recipe("plate", "plate", line("mussel-cream"), line("cream")));
    }

    @Test
    void agreesAfterEachChangeWithARollUpFromNothing() {
        stockPlate();
        rollUp.recipes();
        for (Runnable change : List.<Runnable>of(
                () -> range.load(recipe("fish-stock", "fish-stock", line("bones"), line("mussel"))),
                () -> known("bones", "fish"),
                () -> range.load(recipe("chowder", "chowder", line("mussel-cream"), line("samphire"))),
                () -> range.writing.remove("plate"),
                () -> range.load(recipe("fish-stock", "fish-stock", line("mussel-cream"))),
                () -> range.load(recipe("fish-stock", "fish-stock", line("bones"))))) {
            change.run();
            assertThat(rollUp.recipes()).isEqualTo(new RolledAllergens(range::known, range.made).recipes());
        }
        assertThat(rollUp.recipes()).containsOnlyKeys("chowder", "fish-stock", "mussel-cream");
        assertThat(rollUp.recipes().get("chowder").known()).isFalse();
    }

    @Test
    void saysThroughWhatAPlateContainsSomething() {
        stockPlate();

        AllergenReasons why = rollUp.why(find("plate"));
        assertThat(why.ways(Allergen.of("celery")))
                .map(Way::inWords)
                .containsExactly("The plate → The mussel-cream → The fish-stock → celery-sticks");
        assertThat(why.ways(Allergen.of("milk"))).map(Way::inWords).containsExactly("The plate → cream");
        assertThat(why.rolled().known()).isTrue();
        assertThat(why.unknown()).isEmpty();
    }

    @Test
    void declaresAndNamesByTheListChosen() {
        stockPlate();
        Rolled plate = rollUp.of(find("plate"));

        assertThat(states(plate.by(DeclarationList.EU)))
                .containsOnly(
                        Map.entry("milk", "contains"),
                        Map.entry("celery", "contains"),
                        Map.entry("molluscs", "contains mussel"));
        AllergenSheet american = plate.by(DeclarationList.US);
        assertThat(states(american)).containsOnly(Map.entry("milk", "contains"));
        assertThat(american.othersContained()).map(Allergen::inWords).containsExactly("celery", "molluscs (mussel)");
    }

    @Test
    void passesAllergensUpThroughASubstitute() {
        known("cream", "milk");
        known("soy-cream", "soy");
        range.load(recipe("plate", "plate", line("cream")));
        Use cream = find("plate").uses().get(0);
        Use either = new Use(cream.item(), cream.quantity(), cream.as(), cream.basis(), List.of("soy-cream"));

        AllergenReasons why = rollUp.why(find("plate").withUses(List.of(either)));
        assertThat(why.ways(Allergen.of("soy"))).map(Way::inWords).containsExactly("The plate → or soy-cream");
    }

    @Test
    void keepsUnknownUnknownAndSaysBecauseOfWhat() {
        known("cream", "milk");
        range.allergens("paste", Set.of(), Set.of("sesame"), false);
        range.load(
                recipe("sauce", "sauce", line("cream"), line("paste")),
                recipe("plate", "plate", line("sauce"), line("stranger")),
                recipe("empty", "empty"));

        AllergenReasons why = rollUp.why(find("plate"));
        assertThat(why.unknown())
                .map(Way::inWords)
                .containsExactlyInAnyOrder("The plate → stranger", "The plate → The sauce → paste");
        assertThat(row(why.rolled(), "peanuts").state()).isEqualTo(AllergenState.UNKNOWN);
        assertThat(row(why.rolled(), "milk").state()).isEqualTo(AllergenState.CONTAINS);
        assertThat(row(why.rolled(), "sesame").state()).isEqualTo(AllergenState.MAY_CONTAIN);
        assertThat(rollUp.why(find("empty")).unknown()).map(Way::inWords).containsExactly("The empty");
    }

    @Test
    void givesEachOutputOfABreakdownAllOfItsAllergens() {
        known("crab", "crab");
        range.load(recipe("picking", "white-meat brown-meat shell", line("crab")));

        assertThat(rollUp.item("shell").orElseThrow().contains())
                .map(Allergen::inWords)
                .containsExactly("crustaceans (crab)");
        assertThat(range.made.items().get("shell").allergens().named()).isEqualTo(Map.of("crustaceans", "crab"));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        EU, 10, UNKNOWN
        EU, 10.1, CONTAINS
        US, 10, CONTAINS
        FSANZ, 10, CONTAINS
        US, 9.9, UNKNOWN
        """)
    void doesNotCallSulphitesAbsentFromWhatIsCooked(DeclarationList list, String amount, AllergenState state) {
        wine(amount);
        range.load(recipe("plate", "plate", line("wine")));

        assertThat(row(rollUp.of(find("plate")), list, "sulphites").state()).isEqualTo(state);
    }

    @Test
    void callsSulphitesOfABoughtThingBelowTheLimit() {
        wine("10");
        range.load();

        assertThat(row(rollUp.item("wine").orElseThrow(), DeclarationList.EU, "sulphites")
                        .state())
                .isEqualTo(AllergenState.BELOW);
    }

    private void wine(String amount) {
        Allergens sulphites =
                new Allergens(Set.of("sulphites"), Set.of(), true, Map.of(), Optional.of(new BigDecimal(amount)));
        range.put(with(GivenItems.item("wine", Unit.L), sulphites, Diet.UNKNOWN));
    }

    @Test
    void suitsADietOnlyWhenEverythingDoes() {
        diet("carrot", Set.of("vegan", "vegetarian"), Set.of());
        diet("honey", Set.of("vegetarian"), Set.of("vegan"));
        diet("salt", Set.of("vegan", "vegetarian"), Set.of());
        diet("capers", Set.of("vegan"), Set.of());
        range.load(
                recipe("glaze", "glaze", line("honey"), line("salt")),
                recipe("roast", "roast", line("carrot"), line("glaze")),
                recipe("dish", "dish", line("carrot"), line("capers")),
                recipe("plain", "plain", line("carrot"), line("salt")));

        assertThat(rollUp.of(find("roast")).diets())
                .isEqualTo(Map.of("vegan", Suitability.UNSUITED, "vegetarian", Suitability.SUITS));
        assertThat(rollUp.of(find("dish")).diets())
                .isEqualTo(Map.of("vegan", Suitability.SUITS, "vegetarian", Suitability.UNKNOWN));
        assertThat(rollUp.of(find("plain")).diets())
                .isEqualTo(Map.of("vegan", Suitability.SUITS, "vegetarian", Suitability.SUITS));
        assertThat(rollUp.why(find("roast")).diets().get("vegan"))
                .map(Way::inWords)
                .containsExactly("The roast → The glaze → Honey");
        assertThat(rollUp.why(find("dish")).diets().get("vegetarian"))
                .map(Way::inWords)
                .containsExactly("The dish → Capers");
        assertThat(range.made.items().get("glaze").diet()).isEqualTo(new Diet(Set.of("vegetarian"), Set.of("vegan")));
    }

    @Test
    void followsAChangedIngredient() {
        stockPlate();
        assertThat(rollUp.recipes().get("plate").contains()).doesNotContain(Allergen.of("mustard"));

        known("bones", "mustard");
        assertThat(rollUp.recipes().get("plate").contains()).contains(Allergen.of("mustard"));
    }

    @Test
    void rollsUpWhatIsNotSavedYet() {
        stockPlate();
        Recipe draft = find("plate").withUses(find("fish-stock").uses());

        assertThat(rollUp.of(draft).contains()).map(Allergen::inWords).containsExactly("celery");
    }

    private void diet(String id, Set<String> suits, Set<String> unsuited) {
        range.put(
                with(GivenItems.item(id, Unit.KG), new Allergens(Set.of(), Set.of(), true), new Diet(suits, unsuited)));
    }

    private static Item with(Item item, Allergens allergens, Diet diet) {
        return new Item(
                item.id(),
                item.name(),
                item.group(),
                item.made(),
                item.storage(),
                item.keeps(),
                item.countIn(),
                item.measures(),
                item.preparations(),
                allergens,
                item.writtenPrice(),
                diet);
    }

    private static AllergenSheet.Row row(Rolled rolled, String group) {
        return row(rolled, DeclarationList.EU, group);
    }

    private static AllergenSheet.Row row(Rolled rolled, DeclarationList list, String group) {
        return rolled.by(list).rows().stream()
                .filter(row -> row.group().id().equals(group))
                .findFirst()
                .orElseThrow();
    }

    private static Map<String, String> states(AllergenSheet sheet) {
        return sheet.rows().stream()
                .filter(row -> row.state() != AllergenState.NONE)
                .collect(Collectors.toMap(row -> row.group().id(), AllergenSheet.Row::inWords));
    }
}
