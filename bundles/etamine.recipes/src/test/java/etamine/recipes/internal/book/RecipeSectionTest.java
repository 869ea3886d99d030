package etamine.recipes.internal.book;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.form.RecipeForm;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class RecipeSectionTest {
    private static final String PUREE = """
            {"id": "celeriac-puree", "name": "Celeriac purée", "kind": "component",
             "uses": [{"item": "celeriac", "quantity": "2 cup", "as": "peeled, large dice", "basis": "EP", "cook": "soft"},
                      {"item": "cream", "quantity": "120 ml"}],
             "makes": [{"item": "celeriac-puree", "quantity": "380 g"},
                       {"item": "celeriac-peel", "quantity": "90 g", "credit": {"amount": "1.00", "per": "1 kg"}}],
             "portion": "70 g", "keeps": "P3D", "tested": 3, "colour": "white",
             "steps": [{"id": "simmer", "text": "Simmer.", "hands": "PT5M", "unattended": "PT25M",
                        "equipment": "hob ring", "after": []}],
             "menuPrice": "24.00", "taxPercent": "13.5", "qFactorPercent": "2", "notes": "Pass twice."}""";

    private final Range range = new Range();

    @BeforeEach
    void list() {
        range.item("celeriac", "kg", List.of(Range.prepared("peeled, large dice", "0.74", "1 cup = 156 g")));
        range.item("cream", "l");
    }

    private static String recipe(String id, String uses, String makes) {
        return "{\"id\": \"" + id + "\", \"name\": \"" + id + "\", \"kind\": \"component\", \"uses\": [" + uses
                + "], \"makes\": [" + makes + "]}";
    }

    private static String line(String item, String quantity) {
        return "{\"item\": \"" + item + "\", \"quantity\": \"" + quantity + "\"}";
    }

    @Test
    void readsEveryMember() {
        range.load(PUREE);

        Recipe recipe = range.recipe("celeriac-puree");
        assertThat(recipe.kind()).isEqualTo(Kind.COMPONENT);
        assertThat(recipe.uses().get(0).basis()).isEqualTo(Basis.EP);
        assertThat(recipe.uses().get(0).as()).contains("peeled, large dice");
        assertThat(recipe.uses().get(1).basis()).isEqualTo(Basis.AP);
        assertThat(recipe.makes().get(1).credit()).map(Object::toString).contains("1.00 / 1 kg");
        assertThat(recipe.portion()).map(Object::toString).contains("70 g");
        assertThat(recipe.tested()).isEqualTo(3);
        assertThat(recipe.steps().get(0).unattended()).hasMinutes(25);
        assertThat(recipe.menu().orElseThrow().taxPercent()).isEqualByComparingTo("13.5");
        assertThat(recipe.notes()).isEqualTo("Pass twice.");
    }

    /** Every member the section knows, each with another value than when it is left out. */
    private static final String FULL = """
            {"id": "full", "name": "Full", "kind": "plate",
             "uses": [{"item": "cream", "quantity": "2 l", "basis": "EP", "or": ["celeriac"]}],
             "makes": [{"item": "full", "quantity": "1 l",
                        "marketValue": {"amount": "3.00", "per": "1 l"}}],
             "portion": "100 ml", "keeps": "P3D", "wholeBatches": true, "absorbs": "400 g", "reducesTo": "0.5",
             "station": "sauce", "tested": 3, "archived": true,
             "tests": [{"date": "2026-11-20", "by": "Cook", "in": "1.4 kg",
                        "out": [{"item": "full", "quantity": "700 g"}], "note": "calm", "accepted": true}],
             "steps": [{"id": "a", "text": "Reduce.", "hands": "PT5M", "unattended": "PT1H", "temperature": "85 °C",
                        "holds": "PT30M", "equipment": "pan", "station": "hob", "after": ["b"]}],
             "menuPrice": "24.00", "taxPercent": "13.5", "qFactorPercent": "2", "qFactorAmount": "0.35",
             "packaging": "0.10", "targetFoodCostPercent": "28",
             "drinks": [{"recipe": "full", "level": "house"}], "notes": "n"}""";

    @Test
    void writesEveryMemberAsItReadsIt() {
        range.load(FULL);

        assertThat(Range.json(new RecipeForm().write(range.recipe("full")))).isEqualTo(Range.json(FULL));
        assertThat(range.section.dump()).isEqualTo(Range.json("[" + FULL + "]"));
    }

    @Test
    void namesWhatCannotBeOfTheNewMembers() {
        assertThat(range.troubles(recipe("a", line("cream", "1 l"), line("a", "1 l"))
                        .replace("\"kind\"", "\"absorbs\": \"3 ea\", \"reducesTo\": \"1.5\", \"kind\"")))
                .satisfiesExactly(
                        one -> assertThat(one).startsWith("/0/absorbs Write the water"),
                        two -> assertThat(two).startsWith("/0/reducesTo Write what is left"));
        assertThat(range.troubles(FULL.replace("[\"celeriac\"]", "[\"celeriac\", \"turnip\"]")
                        .replace("{\"recipe\": \"full\"", "{\"recipe\": \"nothing\"")))
                .satisfiesExactly(
                        one -> assertThat(one).startsWith("/0/uses/0/or/1 There is no item “turnip”"),
                        two -> assertThat(two).startsWith("/0/drinks/0/recipe There is no recipe “nothing”"));
    }

    @Test
    void tellsDoubtsOfAFileBesideWritingIt() {
        range.item("rice", "kg");
        assertThat(range.doubts(recipe("boiled-rice", line("rice", "400 g"), line("boiled-rice", "1 kg"))))
                .singleElement()
                .asString()
                .startsWith("/0/makes boiled-rice makes 1 kg out of 400 g");
        assertThat(range.doubts(PUREE)).isEmpty();
    }

    @Test
    void takesAPreparedLineAsEdiblePortionUnlessSaid() {
        range.load(recipe("a", """
                {"item": "celeriac", "quantity": "1 kg", "as": "peeled, large dice"},
                {"item": "celeriac", "quantity": "1 kg", "as": "peeled, large dice", "basis": "AP"}""", line("a", "1 kg")));

        assertThat(range.recipe("a").uses()).extracting(use -> use.basis()).containsExactly(Basis.EP, Basis.AP);
    }

    @Test
    void dumpsWhatItLoadedIncludingUnknownMembers() {
        range.load(PUREE);

        assertThat(range.section.dump()).isEqualTo(Range.json("[" + PUREE + "]"));
    }

    @Test
    void hasASchemaForEveryMemberItReads() {
        var properties = Range.json(range.section.schema()).at("/$defs/recipe/properties");

        Range.json(PUREE).fieldNames().forEachRemaining(member -> {
            if (!member.equals("colour")) {
                assertThat(properties.has(member)).as(member).isTrue();
            }
        });
    }

    @Test
    void findsNothingWrongWithAGoodFile() {
        assertThat(range.troubles(PUREE, recipe("soup", line("celeriac-puree", "2 portion"), line("soup", "1 kg"))))
                .isEmpty();
    }

    @Test
    void namesWhatCannotBeReckoned() {
        assertThat(range.troubles(
                        recipe("a", line("turnip", "1 kg"), line("a", "1 kg")),
                        recipe(
                                "b",
                                "{\"item\": \"celeriac\", \"quantity\": \"1 kg\", \"as\": \"grated\"}",
                                line("b", "1 kg")),
                        recipe("c", line("cream", "300 g"), line("c", "1 kg")),
                        recipe("d", line("a", "2 portion"), line("d", "1 kg"))))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("/0/uses/0/item There is no item “turnip”; add it"),
                        second -> assertThat(second)
                                .startsWith("/1/uses/0/as celeriac has no preparation “grated”")
                                .contains("peeled, large dice"),
                        third -> assertThat(third).startsWith("/2/uses/0/quantity 300 g cream: Add what"),
                        fourth -> assertThat(fourth).startsWith("/3/uses/0/quantity 2 portion a: Add "));
    }

    @Test
    void refusesAmountsThatAreNotMoreThanZeroAndRecipesThatMakeNothing() {
        assertThat(range.troubles(
                        recipe("a", line("cream", "0 ml"), line("a", "1 kg")),
                        recipe("b", line("cream", "-1 ml"), line("b", "0 kg")),
                        recipe("c", line("cream", "1 l"), ""),
                        recipe("d", line("cream", "1 l"), """
                                {"item": "d", "quantity": "1 kg", "credit": {"amount": "-3", "per": "1 kg"}}""")))
                .satisfiesExactly(
                        one -> assertThat(one).startsWith("/0/uses/0/quantity Write more than zero"),
                        two -> assertThat(two).startsWith("/1/uses/0/quantity"),
                        three -> assertThat(three).startsWith("/1/makes/0/quantity"),
                        four -> assertThat(four).startsWith("/1/makes Say what it makes"),
                        five -> assertThat(five).startsWith("/2/makes Say what it makes"),
                        six -> assertThat(six).startsWith("/3/makes/0/credit/amount"));
    }

    @Test
    void pointsAtTheRightLineAfterOneThatCannotBeRead() {
        assertThat(range.troubles(recipe("a", line("cream", "much") + "," + line("turnip", "1 kg"), line("a", "1 kg"))))
                .anySatisfy(trouble -> assertThat(trouble).startsWith("/0/uses/1/item There is no item “turnip”"));
    }

    @Test
    void refusesALoopAcrossFileAndBookWithItsPath() {
        range.load(recipe("jus", line("stock", "1 l"), line("jus", "1 l")));

        assertThat(range.troubles(recipe("stock", line("jus", "1 l"), line("stock", "1 l"))))
                .singleElement()
                .asString()
                .startsWith("/0/uses ")
                .contains("stock -> jus -> stock");
    }

    @Test
    void letsAFileMendALoopByReplacingARecipeOfTheBook() {
        range.load(
                recipe("jus", line("stock", "1 l"), line("jus", "1 l")),
                recipe("stock", line("jus", "1 l"), line("stock", "1 l")));

        assertThat(range.troubles(recipe("stock", line("cream", "1 l"), line("stock", "1 l"))))
                .isEmpty();
    }

    @Test
    void wantsACreditInAUnitThatItsItemReaches() {
        assertThat(range.troubles(recipe("a", line("cream", "1 l"), line("a", "1 kg") + """
                , {"item": "whey", "quantity": "1 l", "credit": {"amount": "1", "per": "1 kg"}}""")))
                .singleElement()
                .asString()
                .startsWith("/0/makes/1/credit/per Whey: Add what");
    }
}
