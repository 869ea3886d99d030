package etamine.recipes.internal.linked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.base.Progress;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.measures.Quantity;
import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Line;
import etamine.recipes.FoundRecipes.Presence;
import etamine.recipes.FoundRecipes.State;
import etamine.recipes.RecipeFiles.Taken;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.allergen.RolledAllergens;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Terms and types: schema.org/Recipe, schema.org/HowTo, schema.org/HowToSection, schema.org/RestrictedDiet. */
class JsonLdRecipesTest {
    private static final String PUREE = """
            {"id": "puree", "name": "Celeriac purée", "kind": "component", "later": {"kept": true},
             "uses": [{"item": "celeriac", "quantity": "2 cup", "as": "diced", "basis": "EP"},
                      {"item": "cream", "quantity": "120 ml"}],
             "makes": [{"item": "puree", "quantity": "4 portion"}], "tested": 3, "keeps": "P3D",
             "steps": [{"id": "boil", "text": "Simmer <gently>.", "hands": "PT5M", "unattended": "PT25M",
                        "equipment": "hob ring"},
                       {"id": "blend", "text": "Blend.", "hands": "PT6M", "after": ["boil"]}],
             "notes": "Pass twice."}
            """;

    private final Range range = new Range();
    private final GateExchange gate = new GateExchange(range);
    private final JsonLdRecipes files = new JsonLdRecipes(
            range.shelf, range::known, range.made, range.lines, new RolledAllergens(range::known, range.made), gate);

    @TempDir
    Path folder;

    @BeforeEach
    void fillTheList() {
        range.item("celeriac", "kg", List.of(Range.prepared("diced", "0.74", "1 cup = 156 g")));
        range.item("cream", "l", List.of(), "1 l = 1006 g");
        range.item("egg", "ea");
    }

    /** schema.org/Recipe: name, recipeYield, recipeIngredient as text, recipeInstructions as HowToStep - from memory. */
    @Test
    void writesTheTermsOfTheStandard() throws IOException {
        range.load(PUREE);
        JsonNode object = written("puree");
        assertThat(object.path("@context").get(0).asText()).isEqualTo("https://schema.org");
        assertThat(object.path("@type").asText()).isEqualTo("Recipe");
        assertThat(object.path("name").asText()).isEqualTo("Celeriac purée");
        assertThat(object.path("recipeYield").asText()).isEqualTo("4 portions");
        assertThat(object.path("recipeIngredient"))
                .extracting(JsonNode::asText)
                .containsExactly("2 cup celeriac, diced", "120 ml cream");
        assertThat(object.path("recipeInstructions"))
                .allSatisfy(step -> assertThat(step.path("@type").asText()).isEqualTo("HowToStep"))
                .extracting(step -> step.path("text").asText())
                .containsExactly("Simmer <gently>.", "Blend.");
        assertThat(object.path("tool").get(0).asText()).isEqualTo("hob ring");
        assertThat(object.path("description").asText()).isEqualTo("Pass twice.");
        assertThat(object.has("keywords")).isFalse();
    }

    /** ISO 8601 durations; 5 + 6 min of hands, 25 min by itself, 36 min from beginning to end - computed. */
    @Test
    void writesTimesAsDurations() throws IOException {
        range.load(PUREE);
        JsonNode object = written("puree");
        assertThat(List.of("prepTime", "cookTime", "totalTime"))
                .extracting(member -> Duration.parse(object.path(member).asText()))
                .containsExactly(Duration.ofMinutes(11), Duration.ofMinutes(25), Duration.ofMinutes(36));
    }

    @Test
    void losesNothingOnTheWayOutAndBack() throws IOException {
        range.load(PUREE);
        Path file = folder.resolve("all.jsonld");
        assertThat(files.write(List.of(), file)).containsExactly("puree");
        assertThat(read(file).recipes()).extracting(Found::presence).containsExactly(Presence.SAME);

        Range other = new Range();
        other.item("celeriac", "kg", List.of(Range.prepared("diced", "0.74", "1 cup = 156 g")));
        other.item("cream", "l");
        JsonLdRecipes there = new JsonLdRecipes(
                other.shelf,
                other::known,
                other.made,
                other.lines,
                new RolledAllergens(other::known, other.made),
                new GateExchange(other));
        FoundRecipes found = there.read(file, Progress.unseen());
        assertThat(there.take(found, Set.of(1), false, Progress.unseen()).problems())
                .isEmpty();
        assertThat(other.recipe("puree")).isEqualTo(range.recipe("puree"));
        assertThat(Range.json(
                        other.book.shelf("recipes").get("puree").orElseThrow().json()))
                .isEqualTo(Range.json(PUREE));
    }

    @Test
    void saysWhatARecipeOfOursWouldChangeAndChangesItInOneStep() throws IOException {
        range.load(PUREE);
        Path file = folder.resolve("one.jsonld");
        files.write(List.of("puree"), file);
        Recipe before = range.recipe("puree");
        range.writing.save(before.withNotes("Salt last."), range.writing.revision("puree"));
        FoundRecipes found = read(file);
        assertThat(found.recipes()).extracting(Found::presence).containsExactly(Presence.CHANGES);
        assertThat(files.take(found, Set.of(1), false, Progress.unseen()).recipes())
                .containsExactly("puree");
        assertThat(range.recipe("puree")).isEqualTo(before);
        range.book.history().undo();
        assertThat(range.recipe("puree").notes()).isEqualTo("Salt last.");
    }

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

    @Test
    void addsNewIngredientsOnlyWhenTold() throws IOException {
        Path file = file("{\"@type\": \"Recipe\", \"name\": \"Dal\", \"recipeYield\": \"2\","
                + " \"recipeIngredient\": [\"500 g red lentils, rinsed\", \"1 l cream\"]}");
        Taken without = files.take(read(file), Set.of(1), false, Progress.unseen());
        assertThat(without.ingredients()).isEmpty();
        assertThat(range.recipe("dal").uses()).extracting(use -> use.item()).containsExactly("cream");
        assertThat(range.recipe("dal").notes()).contains("Line not taken over: 500 g red lentils, rinsed");

        FoundRecipes again = read(file);
        Taken with = files.take(again, Set.of(1), true, Progress.unseen());
        assertThat(with.ingredients()).containsExactly("red-lentils");
        Recipe second = range.recipe(again.recipes().get(0).recipe().id());
        assertThat(second.uses()).extracting(use -> use.item()).containsExactly("red-lentils", "cream");
        assertThat(second.notes()).contains("The line in full: 500 g red lentils, rinsed");
    }

    @Test
    void writesNothingOnReading() throws IOException {
        read(file("{\"@type\": \"Recipe\", \"name\": \"Dal\", \"recipeIngredient\": [\"1 l cream\"]}"));
        assertThat(range.recipes.all()).isEmpty();
        assertThat(gate.loaded).isEmpty();
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

    @Test
    void keepsTheGateShutForWhatCannotBeMade() throws IOException {
        Path file = file("""
                {"@type": "Recipe", "name": "Loop", "etamine:recipe": {"id": "loop", "name": "Loop",
                 "uses": [{"item": "loop", "quantity": "1 kg"}], "makes": [{"item": "loop", "quantity": "1 kg"}]}}
                """);
        Taken taken = files.take(read(file), Set.of(1), false, Progress.unseen());
        assertThat(taken.problems()).singleElement().asString().startsWith("Loop: ");
        assertThat(range.recipes.all()).isEmpty();
    }

    @Test
    void writesNoFileWhenThereIsNoSuchRecipe() {
        Path file = folder.resolve("none.jsonld");
        assertThatThrownBy(() -> files.write(List.of("nothing"), file)).hasMessageContaining("no recipe “nothing”");
        assertThatThrownBy(() -> files.write(List.of(), file)).hasMessageContaining("write one first");
        assertThat(file).doesNotExist();
    }

    private JsonNode written(String id) throws IOException {
        Path file = folder.resolve("written.jsonld");
        files.write(List.of(id), file);
        return Range.json(Files.readString(file));
    }

    private Path file(String content) throws IOException {
        Path file = folder.resolve("file.jsonld");
        Files.write(file, content.getBytes(StandardCharsets.UTF_8));
        return file;
    }

    private FoundRecipes read(Path file) {
        return files.read(file, Progress.unseen());
    }

    private Found foreign(String content) throws IOException {
        FoundRecipes found = read(file(content));
        assertThat(found.problems()).isEmpty();
        return found.recipes().get(0);
    }

    private String problem(String content) throws IOException {
        FoundRecipes found = read(file(content));
        assertThat(found.recipes()).isEmpty();
        return String.join(" ", found.problems());
    }
}
