package etamine.recipes.internal.linked;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Progress;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Line;
import etamine.recipes.FoundRecipes.Presence;
import etamine.recipes.FoundRecipes.State;
import etamine.recipes.internal.form.RecipeForm;
import etamine.recipes.internal.form.RecipeReading;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** Reads the recipes of one file. */
final class LdRecipes {
    private static final int MOST = 2_000;
    private static final int MOST_LINES = 500;

    private final LdLines lines;
    private final LdPictures pictures;
    private final Beside beside;
    private final Progress progress;
    private final List<Found> found = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();
    private boolean tooMany;

    /** A recipe in the file. */
    private record Place(JsonNode node, String pointer) {
        Optional<ObjectNode> own() {
            return node.path(LdWords.ENTRY) instanceof ObjectNode entry && isReadable(entry)
                    ? Optional.of(entry)
                    : Optional.empty();
        }
    }

    /**
     * What the book says.
     *
     * @param stored a recipe's entry as it is stored, by id
     * @param items whether there is an item of an id
     * @param written the line of a use as people write it
     */
    record Beside(
            Function<String, Optional<String>> stored,
            Function<String, Boolean> items,
            Function<Use, String> written) {}

    LdRecipes(LdLines lines, LdPictures pictures, Beside beside, Progress progress) {
        this.lines = lines;
        this.pictures = pictures;
        this.beside = beside;
        this.progress = progress;
    }

    boolean tooMany() {
        return tooMany;
    }

    /** Looks for recipes in a value and everything in it; references are not followed. */
    void search(JsonNode node, String pointer) {
        if (progress.cancelled()) {
            return;
        }
        if (LdWords.is(node, "Recipe")) {
            take(node, pointer);
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                search(node.get(i), pointer + "/" + i);
            }
        } else {
            node.properties().forEach(member -> {
                if (member.getValue().isContainerNode() && !member.getKey().equals("@context")) {
                    String name = member.getKey().replace("~", "~0").replace("/", "~1");
                    search(member.getValue(), pointer + "/" + name);
                }
            });
        }
    }

    private void take(JsonNode node, String pointer) {
        if (places.size() < MOST) {
            places.add(new Place(node, pointer));
        } else {
            tooMany = true;
        }
    }

    /** Reads what the search came upon. What one recipe of the file makes, another may use. */
    List<Found> read() {
        places.forEach(place -> place.own().ifPresent(entry -> {
            ids.add(entry.path("id").asText());
            entry.path("makes").forEach(make -> ids.add(make.path("item").asText()));
        }));
        for (Place place : places) {
            if (progress.cancelled()) {
                break;
            }
            progress.at("recipe " + (found.size() + 1) + " of " + places.size(), (double) found.size() / places.size());
            Found read = place.own()
                    .map(entry -> own(entry, place.node().path(LdWords.NAMES), place.pointer()))
                    .orElseGet(() -> foreign(place.node(), place.pointer()));
            found.add(pictures.pictured(read, place.node().path("image")));
        }
        return found;
    }

    private static boolean isReadable(ObjectNode entry) {
        EntryReader reader = new EntryReader(entry);
        Recipe recipe = new RecipeReading(reader).recipe();
        return reader.troubles().isEmpty() && !recipe.makes().isEmpty();
    }

    /** A recipe that this program wrote, whole. */
    private Found own(ObjectNode entry, JsonNode names, String pointer) {
        Recipe recipe = new RecipeReading(new EntryReader(entry)).recipe();
        List<Line> read = recipe.uses().stream().map(use -> ownLine(use, names)).toList();
        Presence presence = beside.stored()
                .apply(recipe.id())
                .map(stored -> same(stored, entry) ? Presence.SAME : Presence.CHANGES)
                .orElse(Presence.NEW);
        return new Found(found.size() + 1, pointer, recipe, presence, read, List.of(), entry.toString());
    }

    private Line ownLine(Use use, JsonNode names) {
        String name = LdWords.text(names.path(use.item()));
        if (beside.items().apply(use.item()) || ids.contains(use.item())) {
            return new Line(beside.written().apply(use), State.CLEAR, Optional.of(use), Optional.empty(), "");
        }
        String text = use.quantity() + " " + (name.isEmpty() ? use.item() : name);
        return lines.named(use, name, use.as().map(as -> text + ", " + as).orElse(text));
    }

    private static boolean same(String stored, ObjectNode entry) {
        return EntryJson.read(stored).equals(EntryJson.read(entry.toString()));
    }

    private Found foreign(JsonNode node, String pointer) {
        List<String> remarks = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        String name = name(node, remarks);
        List<Line> read = read(node.path("recipeIngredient"), remarks);
        List<Step> steps = LdSteps.of(node.path("recipeInstructions"), remarks);
        notes.add(LdWords.text(node.path("description")));
        steps = timed(node, steps, remarks, notes);
        LdWords.many(node.path("tool")).forEach(tool -> notes.add("Equipment: " + LdWords.text(tool)));
        unknownMembers(node, remarks);
        String id = freshId(name);
        List<Use> uses = read.stream().flatMap(line -> line.use().stream()).toList();
        Recipe recipe = new Recipe(
                id,
                name,
                Kind.COMPONENT,
                uses,
                List.of(new Make(id, LdYield.of(node, remarks), Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                0,
                steps,
                Optional.empty(),
                String.join("\n", notes.stream().filter(note -> !note.isBlank()).toList()));
        String entry = new RecipeForm().write(recipe);
        return new Found(found.size() + 1, pointer, recipe, Presence.NEW, read, remarks, entry);
    }

    private static String name(JsonNode node, List<String> remarks) {
        String name = LdWords.text(node.path("name")).replaceAll("\\s+", " ");
        if (name.isEmpty()) {
            remarks.add("It has no name; give it one.");
            return "Recipe without a name";
        }
        return name.length() <= 160 ? name : name.substring(0, name.offsetByCodePoints(0, 100)) + "…";
    }

    private List<Line> read(JsonNode ingredients, List<String> remarks) {
        List<JsonNode> all = LdWords.many(ingredients);
        if (all.isEmpty()) {
            remarks.add("It has no list of ingredients; write its lines.");
        }
        if (all.size() > MOST_LINES) {
            remarks.add("It has " + all.size() + " lines; those after the first " + MOST_LINES + " are left out.");
        }
        List<Line> read = new ArrayList<>();
        for (JsonNode each : all.subList(0, Math.min(MOST_LINES, all.size()))) {
            String text = LdWords.text(each);
            text.lines().filter(line -> !line.isBlank()).forEach(line -> read.add(lines.read(line)));
            if (text.isBlank()) {
                read.add(LdLines.unclear(
                        LdWords.shown(each.toString()), "This is no text; write an amount and an item."));
            }
        }
        return read;
    }

    /** The standard has times for the whole only; they go to the one step there is, or into the notes. */
    private static List<Step> timed(JsonNode node, List<Step> steps, List<String> remarks, List<String> notes) {
        Optional<Duration> hands = LdWords.time(node, "prepTime", remarks);
        Optional<Duration> cooking =
                LdWords.time(node, "cookTime", remarks).or(() -> LdWords.time(node, "performTime", remarks));
        if (steps.size() == 1 && (hands.isPresent() || cooking.isPresent())) {
            Step only = steps.get(0);
            return List.of(new Step(
                    only.id(), only.text(), hands.orElse(Duration.ZERO), cooking.orElse(Duration.ZERO), "", List.of()));
        }
        for (String member : List.of("prepTime", "cookTime", "performTime", "totalTime")) {
            String said = LdWords.text(node.path(member));
            if (!said.isEmpty()) {
                notes.add(member + ": " + LdWords.shown(said));
            }
        }
        if (hands.isPresent() || cooking.isPresent()) {
            remarks.add(
                    "Its times are of the whole, not of single steps; they stand in the notes. Give each step its own.");
        }
        return steps;
    }

    private static void unknownMembers(JsonNode node, List<String> remarks) {
        Set<String> left = new TreeSet<>();
        for (Map.Entry<String, JsonNode> member : node.properties()) {
            if (!LdWords.READ.contains(member.getKey()) && !member.getKey().equals("yield")) {
                left.add(LdWords.shown(member.getKey()));
            }
        }
        if (!left.isEmpty()) {
            List<String> named = left.stream().limit(20).toList();
            remarks.add("Not taken over, since this book has no place for it: " + String.join(", ", named)
                    + (left.size() > named.size() ? " and " + (left.size() - named.size()) + " more." : "."));
        }
    }

    private String freshId(String name) {
        String base = PlainId.of(name, "recipe");
        String id = base;
        for (int i = 2; beside.stored().apply(id).isPresent() || beside.items().apply(id) || ids.contains(id); i++) {
            id = base + "-" + i;
        }
        ids.add(id);
        return id;
    }
}
