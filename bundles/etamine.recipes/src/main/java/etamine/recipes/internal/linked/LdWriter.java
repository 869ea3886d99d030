package etamine.recipes.internal.linked;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.recipes.RecipePhotos.Photo;
import etamine.recipes.UseLines;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.form.RecipeForm;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Writes recipes with the terms of schema.org/Recipe, and beside them the whole in this program's own form. */
final class LdWriter {
    /** The names of this program's own members; a name, not an address: there is nothing to fetch. */
    private static final String NAMESPACE = "urn:etamine:exchange:1#";

    private final UseLines lines;
    private final ItemView items;
    private final Function<String, String> stored;
    private final Function<Recipe, List<String>> diets;
    private final Function<Recipe, Optional<Photo>> photos;

    /**
     * What the book says of a recipe.
     *
     * @param entry its entry as it is stored, by id
     * @param diets the diets of schema.org/RestrictedDiet that a recipe is known to suit
     * @param photo its photo
     */
    record Stored(
            Function<String, String> entry,
            Function<Recipe, List<String>> diets,
            Function<Recipe, Optional<Photo>> photo) {}

    LdWriter(UseLines lines, ItemView items, Stored stored) {
        this.lines = lines;
        this.items = items;
        this.stored = stored.entry();
        this.diets = stored.diets();
        this.photos = stored.photo();
    }

    /** One recipe as one object, several as a graph. */
    String write(List<Recipe> recipes) {
        ObjectNode file = RecipeForm.JSON.createObjectNode();
        ArrayNode context = file.putArray("@context").add("https://schema.org");
        ObjectNode own = context.addObject().put("etamine", NAMESPACE);
        own.putObject(LdWords.ENTRY).put("@id", NAMESPACE + "recipe").put("@type", "@json");
        own.putObject(LdWords.NAMES).put("@id", NAMESPACE + "names").put("@type", "@json");
        if (recipes.size() == 1) {
            file.setAll(object(recipes.get(0)));
        } else {
            ArrayNode graph = file.putArray("@graph");
            recipes.forEach(recipe -> graph.add(object(recipe)));
        }
        return file.toPrettyString() + "\n";
    }

    private ObjectNode object(Recipe recipe) {
        ObjectNode object =
                RecipeForm.JSON.createObjectNode().put("@type", "Recipe").put("name", recipe.name());
        object.put("recipeCategory", RecipeForm.word(recipe.kind()));
        if (!recipe.notes().isEmpty()) {
            object.put("description", recipe.notes());
        }
        photos.apply(recipe).ifPresent(photo -> object.set("image", LdPictures.written(photo)));
        object.put("recipeYield", makes(recipe));
        ArrayNode ingredients = object.putArray("recipeIngredient");
        recipe.uses().forEach(use -> ingredients.add(lines.write(use)));
        if (!recipe.steps().isEmpty()) {
            steps(object, recipe.steps());
        }
        ArrayNode suits = object.putArray("suitableForDiet");
        diets.apply(recipe).forEach(diet -> suits.add("https://schema.org/" + diet));
        if (suits.isEmpty()) {
            object.remove("suitableForDiet");
        }
        object.set(LdWords.ENTRY, EntryJson.read(stored.apply(recipe.id())));
        names(object.putObject(LdWords.NAMES), recipe);
        return object;
    }

    private static String makes(Recipe recipe) {
        if (recipe.makes().isEmpty()) {
            return "1 portion";
        }
        Quantity makes = recipe.makes().get(0).quantity();
        return makes.unit().equals(Unit.PORTION) ? makes.amount() + " portions" : makes.toString();
    }

    private void steps(ObjectNode object, List<Step> steps) {
        ArrayNode instructions = object.putArray("recipeInstructions");
        steps.forEach(step -> instructions.addObject().put("@type", "HowToStep").put("text", step.text()));
        put(object, "prepTime", steps.stream().map(Step::hands).reduce(Duration.ZERO, Duration::plus));
        put(object, "cookTime", steps.stream().map(Step::unattended).reduce(Duration.ZERO, Duration::plus));
        put(object, "totalTime", longest(steps));
        ArrayNode tools = object.putArray("tool");
        steps.stream()
                .map(Step::equipment)
                .filter(tool -> !tool.isEmpty())
                .distinct()
                .forEach(tools::add);
        if (tools.isEmpty()) {
            object.remove("tool");
        }
    }

    /** How long it takes when nothing waits but for the steps it is said to come after; one after another if none is. */
    private static Duration longest(List<Step> steps) {
        boolean ordered = steps.stream().anyMatch(step -> !step.after().isEmpty());
        Map<String, Duration> ends = new TreeMap<>();
        Duration end = Duration.ZERO;
        Duration last = Duration.ZERO;
        for (Step step : steps) {
            Duration begin = ordered
                    ? step.after().stream()
                            .map(id -> ends.getOrDefault(id, Duration.ZERO))
                            .max(Duration::compareTo)
                            .orElse(Duration.ZERO)
                    : last;
            last = begin.plus(step.hands()).plus(step.unattended());
            ends.put(step.id(), last);
            end = end.compareTo(last) < 0 ? last : end;
        }
        return end;
    }

    private static void put(ObjectNode object, String member, Duration time) {
        if (!time.isZero()) {
            object.put(member, time.toString());
        }
    }

    private void names(ObjectNode names, Recipe recipe) {
        recipe.uses().stream().map(Use::item).forEach(id -> names.put(id, items.name(id)));
        recipe.makes().stream().map(Make::item).forEach(id -> names.put(id, items.name(id)));
    }
}
