package etamine.recipes.internal.linked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.base.Progress;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Presence;
import etamine.recipes.RecipeFiles.Taken;
import etamine.recipes.internal.Range;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Terms and types: schema.org/Recipe, schema.org/HowTo, schema.org/HowToSection, schema.org/RestrictedDiet. */
class JsonLdRecipesTest extends LinkedFiles {
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
        JsonLdRecipes there = files(other, new GateExchange(other));
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
}
