package etamine.recipes.internal.book;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Problem;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.Change;
import etamine.recipes.Scaled;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.RecipeGraph;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Recipes nobody should write: refused or marked, and the others stay as they were. */
class HostileRecipesTest {
    private final Range range = new Range();

    private static Recipe recipe(String id, List<Use> uses, String makes) {
        List<Make> made = makes.isEmpty() ? List.of() : List.of(new Make(id, Quantity.parse(makes), Optional.empty()));
        return new Recipe(
                id,
                id,
                Kind.COMPONENT,
                uses,
                made,
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                Optional.empty(),
                "");
    }

    private static Use use(String item, String quantity) {
        return new Use(item, Quantity.parse(quantity), Optional.empty(), Basis.AP);
    }

    @Test
    void takesARecipeOfTenThousandLines() {
        range.item("salt", "kg");
        List<Use> lines = Collections.nCopies(10_000, use("salt", "1 g"));
        Recipe long1 = recipe("long", lines, "10 kg");

        assertThat(range.writing.save(long1, 0)).isInstanceOf(Change.Done.class);
        assertThat(range.writing.problems(range.recipe("long"))).isEmpty();
        assertThat(range.scaling.to("long", Quantity.parse("20 kg"))).isInstanceOf(Scaled.Batch.class);
        Recipe other = long1.withUses(lines.subList(1, 10_000));
        assertThat(range.revisions.between(long1, other)).hasSize(1);
    }

    @Test
    void followsAChainOfTwoHundred() {
        range.item("salt", "kg");
        List<String> entries = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            entries.add("{\"id\": \"r" + i + "\", \"name\": \"R\", \"uses\": [{\"item\": \""
                    + (i == 0 ? "salt" : "r" + (i - 1)) + "\", \"quantity\": \"3 kg\"}], \"makes\": [{\"item\": \"r" + i
                    + "\", \"quantity\": \"2 kg\"}]}");
        }
        range.load(entries.toArray(String[]::new));

        Quantity salt = range.recipes
                .require(Map.of("r199", Quantity.parse("1 g")), Map.of())
                .bought()
                .get("salt");

        // each of the 200 takes half as much again as it gives
        Ratio expected = Ratio.ONE;
        for (int i = 0; i < 200; i++) {
            expected = expected.times(Ratio.of(3, 2));
        }
        assertThat(salt.amount()).isEqualTo(expected);
        assertThat(range.writing.problems(range.recipe("r199"))).isEmpty();
    }

    @Test
    void refusesALoopOfTwoHundredWithItsPath() {
        List<String> entries = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            entries.add("{\"id\": \"r" + i + "\", \"name\": \"R" + i + "\", \"uses\": [{\"item\": \"r" + (i + 1) % 200
                    + "\", \"quantity\": \"1 kg\"}], \"makes\": [{\"item\": \"r" + i + "\", \"quantity\": \"1 kg\"}]}");
        }

        assertThat(range.troubles(entries.toArray(String[]::new)))
                .hasSize(200)
                .allSatisfy(trouble -> assertThat(trouble).contains("circle"));
    }

    @Test
    void refusesWhatMakesNothingOrNothingOfIt() {
        range.item("salt", "kg");

        assertThat(refused(recipe("a", List.of(use("salt", "1 g")), ""))).containsExactly("makes-nothing");
        assertThat(refused(recipe("b", List.of(use("salt", "1 g")), "0 kg"))).containsExactly("not-positive");
        assertThat(refused(recipe("", List.of(), "1 kg"))).contains("bad-id", "no-name");
        assertThat(range.recipes.all()).isEmpty();
    }

    private List<String> refused(Recipe recipe) {
        Change change = range.writing.save(recipe, 0);
        assertThat(change).isInstanceOf(Change.Refused.class);
        return ((Change.Refused) change).problems().stream().map(Problem::code).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "南瓜のスープ",
                "حساء الكرفس",
                "борщ",
                "🥦 soup",
                "a\u0000b",
                "\u202eevil",
                "<script>alert(1)</script>",
                "'; DROP TABLE recipes; --",
                "%s %d ${x}",
                "e\u0301\u0301\u0301\u0301"
            })
    void takesNamesInAnyScriptAndShowsThemAsTheyAre(String name) {
        range.item("salt", "kg");
        Recipe recipe = range.writing.start(name, Kind.COMPONENT).withUses(List.of(use("salt", "1 kg")));

        assertThat(range.writing.save(recipe, 0)).isInstanceOf(Change.Done.class);

        assertThat(range.recipe(recipe.id()).name()).isEqualTo(name);
        assertThat(range.cards.card(recipe)).first().asString().startsWith(name);
        range.lines.complete("1 kg " + name, 5);
        range.lines.read("1 kg " + name);
    }

    // The order in which recipes are given makes no difference to their graph: a property, for any order
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void comesToTheSameGraphInAnyOrder(long seed) {
        Random random = new Random(seed);
        List<Recipe> recipes = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            List<Use> uses = new ArrayList<>();
            for (int j = random.nextInt(4); j > 0; j--) {
                uses.add(use("r" + random.nextInt(60), "1 kg"));
            }
            recipes.add(recipe("r" + i, uses, "1 kg"));
        }
        RecipeGraph first = graph(recipes);
        for (int i = 0; i < 5; i++) {
            Collections.shuffle(recipes, random);
            RecipeGraph other = graph(recipes);

            assertThat(other.inOrder()).isEqualTo(first.inOrder());
            assertThat(other.recipes().keySet())
                    .allSatisfy(id -> assertThat(other.loopThrough(id).isPresent())
                            .isEqualTo(first.loopThrough(id).isPresent()));
        }
    }

    private static RecipeGraph graph(List<Recipe> recipes) {
        Map<String, Recipe> map = new TreeMap<>();
        recipes.forEach(recipe -> map.put(recipe.id(), recipe));
        return RecipeGraph.of(map);
    }
}
