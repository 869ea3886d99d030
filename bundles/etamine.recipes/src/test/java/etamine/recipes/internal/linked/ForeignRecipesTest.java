package etamine.recipes.internal.linked;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.measures.Quantity;
import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Line;
import etamine.recipes.FoundRecipes.State;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read of files of other programs. Terms and types: schema.org/Recipe, schema.org/HowTo, schema.org/HowToSection, schema.org/RestrictedDiet. */
class ForeignRecipesTest extends LinkedFiles {
    @Test
    void readsAForeignRecipeLineByLine() throws IOException {
        Found soup = foreign("""
                {"@context": "http://schema.org/", "@type": ["Recipe", "NewsArticle"], "name": "Leek &amp; potato soup",
                 "description": "<p>A plain <b>soup</b>.</p>", "recipeYield": ["4", "4 bowls"],
                 "recipeIngredient": ["2 cup celeriac, diced", "500 g red lentils, rinsed", "Pepper to taste", "2 egg"],
                 "recipeInstructions": [
                   {"@type": "HowToSection", "name": "Base", "itemListElement": [
                     {"@type": "HowToStep", "text": "Melt the&nbsp;butter."}, {"@type": "HowToStep", "name": "Stir"}]},
                   "Blend."],
                 "image": "http://picture.example/x.png"}
                """);
        assertThat(soup.recipe().name()).isEqualTo("Leek & potato soup");
        assertThat(soup.recipe().notes()).isEqualTo("A plain soup.");
        assertThat(soup.recipe().makes().get(0).quantity()).isEqualTo(Quantity.parse("4 portion"));
        assertThat(soup.lines())
                .extracting(Line::state)
                .containsExactly(State.CLEAR, State.NEW, State.UNCLEAR, State.CLEAR);
        assertThat(soup.lines().get(1).fresh().orElseThrow().name()).isEqualTo("Red lentils");
        assertThat(soup.lines().get(2).remark()).isNotEmpty();
        assertThat(soup.recipe().steps())
                .extracting(Step::text)
                .containsExactly("Base: Melt the butter.", "Stir", "Blend.");
        assertThat(soup.remarks()).anySatisfy(remark -> assertThat(remark).contains("never fetched"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            4                       | 4 portion
            "4"                     | 4 portion
            "Serves 6"              | 6 portion
            "1.5 kg"                | 1.5 kg
            "about 2 l"             | 2 l
            ["12", "750 g"]         | 750 g
            {"value": 8}            | 8 portion
            """)
    void understandsYields(String written, String makes) throws IOException {
        Found found = foreign("{\"@type\": \"Recipe\", \"name\": \"x\", \"recipeYield\": " + written + "}");
        assertThat(found.recipe().makes().get(0).quantity()).isEqualTo(Quantity.parse(makes));
    }

    @Test
    void takesTimesOfTheWholeForTheOnlyStepElseForNotes() throws IOException {
        String times = "\"prepTime\": \"PT20M\", \"cookTime\": \"PT1H\"";
        Step only = foreign(
                        "{\"@type\": \"Recipe\", \"name\": \"x\", " + times + ", \"recipeInstructions\": \"Cook.\"}")
                .recipe()
                .steps()
                .get(0);
        assertThat(List.of(only.hands(), only.unattended()))
                .containsExactly(Duration.ofMinutes(20), Duration.ofHours(1));
        Recipe several = foreign("{\"@type\": \"Recipe\", \"name\": \"x\", " + times
                        + ", \"recipeInstructions\": [\"Cook.\", \"Serve.\"]}")
                .recipe();
        assertThat(several.notes()).contains("prepTime: PT20M").contains("cookTime: PT1H");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"@type": "Recipe", "name": {"a": 1}, "recipeIngredient": {"x": [1]}, "recipeInstructions": 42}
            {"@type": "Recipe", "name": "x", "recipeYield": true, "prepTime": "soon", "recipeIngredient": [null, [], 7]}
            {"@type": "Recipe", "name": "x", "etamine:recipe": {"id": 5, "uses": "x"}, "recipeIngredient": "1 l cream"}
            {"@context": "https://nowhere.example/context", "@type": "Recipe", "name": "x", "recipeYield": "-3"}
            {"@type": "Recipe", "name": "x", "recipeInstructions": {"itemListElement": [{"@id": "#step1"}, [[["y"]]]]}}
            """)
    void marksWhatHasTheWrongType(String hostile) throws IOException {
        Found found = foreign(hostile);
        boolean said =
                !found.remarks().isEmpty() || found.lines().stream().anyMatch(line -> line.state() != State.CLEAR);
        assertThat(said).isTrue();
        assertThat(found.recipe().makes()).isNotEmpty();
    }

    @Test
    void findsRecipesInGraphsListsAndPages() throws IOException {
        String recipe =
                "{\"@type\": \"https://schema.org/Recipe\", \"name\": \"%s\", \"recipeIngredient\": \"1 l cream\"}";
        assertThat(read(file("{\"@graph\": [{\"@type\": \"WebSite\"}, " + recipe.formatted("a") + "]}"))
                        .recipes())
                .extracting(Found::pointer)
                .containsExactly("/@graph/1");
        assertThat(read(file("[" + recipe.formatted("a") + "," + recipe.formatted("b") + "]"))
                        .recipes())
                .extracting(found -> found.recipe().id())
                .containsExactly("a", "b");
        assertThat(read(file("\uFEFF<!doctype html><SCRIPT Type='application/ld+json'>" + recipe.formatted("a")
                                + "</SCRIPT><script>alert(1)</script>"))
                        .recipes())
                .hasSize(1);
    }

    @Test
    void refusesWhatIsTooDeepTooLongOrNoText() throws IOException {
        assertThat(problem("[".repeat(100_000))).contains("too deep or too long");
        assertThat(problem("{\"@type\": \"Recipe\", \"name\": \"" + "x".repeat(1_100_000) + "\"}"))
                .contains("too long");
        assertThat(problem(" ".repeat(LdSource.LARGEST + 1))).contains("more than 64 MB");
        assertThat(problem("{\"@type\": \"Recipe\"")).contains("not JSON");
        assertThat(problem("3")).contains("nothing in it");
        assertThat(problem("{\"@type\": \"Thing\"}")).contains("no recipe");
        assertThat(problem("<html><script>x</script></html>")).contains("no recipe data");
        Path binary = folder.resolve("binary");
        Files.write(binary, new byte[] {'{', (byte) 0xC3, (byte) 0x28, '}'});
        assertThat(read(binary).problems()).singleElement().asString().contains("UTF-8");
        assertThat(read(folder.resolve("none")).problems())
                .singleElement()
                .asString()
                .contains("no such file");
        assertThat(read(folder).problems()).singleElement().asString().contains("folder");
    }

    @Test
    void boundsLinesStepsAndTexts() throws IOException {
        String lines = "\"1 l cream\",".repeat(600);
        String steps = "\"Do.\",".repeat(300);
        Found found = foreign("{\"@type\": \"Recipe\", \"name\": \"" + "n".repeat(500) + "\", \"recipeIngredient\": ["
                + lines + "\"<" + "<a".repeat(50_000) + "\"], \"recipeInstructions\": [" + steps + "\""
                + "&".repeat(90_000)
                + "\"]}");
        assertThat(found.lines()).hasSize(500);
        assertThat(found.recipe().steps()).hasSize(200);
        assertThat(found.recipe().name().length()).isLessThan(200);
        assertThat(found.remarks()).anyMatch(text -> text.contains("600") || text.contains("601"));
        assertThat(found.remarks()).anyMatch(text -> text.contains("more than 200 steps"));
    }

    private String problem(String content) throws IOException {
        FoundRecipes found = read(file(content));
        assertThat(found.recipes()).isEmpty();
        return String.join(" ", found.problems());
    }
}
