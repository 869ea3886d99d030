package etamine.recipes.internal.linked;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Progress;
import etamine.documents.Pictures;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.Exchange;
import etamine.kitchen.exchange.LoadResult;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.AllergenRollUp;
import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Fresh;
import etamine.recipes.FoundRecipes.Line;
import etamine.recipes.FoundRecipes.State;
import etamine.recipes.RecipeFiles;
import etamine.recipes.RecipePhotos;
import etamine.recipes.RecipePhotos.Photo;
import etamine.recipes.Suitability;
import etamine.recipes.UseLines;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.NamedPhotos;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.form.RecipeForm;
import etamine.storage.Document;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Recipes as JSON-LD; what is taken over goes through the same gate as any exchange file. */
@Component
public final class JsonLdRecipes implements RecipeFiles {
    /** schema.org/RestrictedDiet has these; others of the kitchen's words it has not. */
    private static final Map<String, String> DIETS = Map.of(
            "vegetarian", "VegetarianDiet",
            "vegan", "VeganDiet",
            "halal", "HalalDiet",
            "kosher", "KosherDiet",
            "hindu", "HinduDiet");

    private final RecipeShelf shelf;
    private final KnownItems known;
    private final MadeItems made;
    private final UseLines lines;
    private final AllergenRollUp rollUp;
    private final Exchange exchange;
    private volatile @Nullable RecipePhotos photos;
    private volatile @Nullable Pictures pictures;

    /** Files of the recipes on that shelf. */
    @Activate
    public JsonLdRecipes(
            @Reference RecipeShelf shelf,
            @Reference KnownItems known,
            @Reference MadeItems made,
            @Reference UseLines lines,
            @Reference AllergenRollUp rollUp,
            @Reference Exchange exchange) {
        this.shelf = shelf;
        this.known = known;
        this.made = made;
        this.lines = lines;
        this.rollUp = rollUp;
        this.exchange = exchange;
    }

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    void bindPhotos(RecipePhotos found) {
        photos = found;
    }

    void unbindPhotos(RecipePhotos gone) {
        if (photos == gone) {
            photos = null;
        }
    }

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    void bindPictures(Pictures found) {
        pictures = found;
    }

    void unbindPictures(Pictures gone) {
        if (pictures == gone) {
            pictures = null;
        }
    }

    @Override
    public List<String> write(List<String> wanted, Path file) throws IOException {
        Map<String, Recipe> all = shelf.graph().recipes();
        List<Recipe> recipes = new ArrayList<>();
        for (String id : wanted) {
            recipes.add(Optional.ofNullable(all.get(id))
                    .orElseThrow(() -> new IllegalArgumentException(
                            "There is no recipe “" + id + "”; the verb recipes lists them all.")));
        }
        if (wanted.isEmpty()) {
            all.values().stream()
                    .filter(recipe -> !recipe.standing().archived())
                    .forEach(recipes::add);
        }
        if (recipes.isEmpty()) {
            throw new IllegalArgumentException("There is no recipe to write; write one first.");
        }
        LdWriter writer = new LdWriter(
                lines,
                ItemView.of(known, made),
                new LdWriter.Stored(id -> stored(id).orElseThrow(), this::diets, photos()));
        CompleteFile.write(file, writer.write(recipes).getBytes(StandardCharsets.UTF_8));
        return recipes.stream().map(Recipe::id).toList();
    }

    /** The photos of recipes, as many as a file can hold that is still read; in the book they are all. */
    private Function<Recipe, Optional<Photo>> photos() {
        RecipePhotos now = photos;
        AtomicLong room = new AtomicLong(LdSource.LARGEST / 4L * 3);
        return recipe -> Optional.ofNullable(now)
                .filter(all -> recipe.photo().isPresent() && room.get() > 0)
                .flatMap(all -> all.find(recipe.id()))
                .filter(photo -> room.addAndGet(-photo.base64().length()) >= 0);
    }

    private Optional<String> stored(String id) {
        return shelf.book().shelf(RecipeShelf.NAME).get(id).map(Document::json);
    }

    private List<String> diets(Recipe recipe) {
        return rollUp.of(recipe).diets().entrySet().stream()
                .filter(diet -> diet.getValue() == Suitability.SUITS && DIETS.containsKey(diet.getKey()))
                .map(diet -> DIETS.get(diet.getKey()))
                .sorted()
                .toList();
    }

    @Override
    public FoundRecipes read(Path file, Progress progress) {
        LdSource source = LdSource.read(file);
        List<String> problems = new ArrayList<>(source.problems());
        ItemView items = ItemView.of(known, made);
        LdRecipes reading = new LdRecipes(
                new LdLines(
                        lines,
                        items::find,
                        id -> items.find(id).isPresent() || stored(id).isPresent()),
                new LdPictures(Optional.ofNullable(pictures)),
                new LdRecipes.Beside(this::stored, id -> items.find(id).isPresent(), lines::write),
                progress);
        for (int i = 0; i < source.roots().size(); i++) {
            reading.search(source.roots().get(i), source.roots().size() == 1 ? "" : "/" + i);
        }
        List<Found> found = reading.read();
        if (found.isEmpty() && problems.isEmpty()) {
            problems.add("There is no recipe in this file: nothing in it has the type Recipe of schema.org.");
        }
        if (reading.tooMany()) {
            problems.add("There are more than 2000 recipes in this file; the others are left out. Split the file.");
        }
        return new FoundRecipes(file, found, problems);
    }

    @Override
    public Taken take(FoundRecipes found, Set<Integer> which, boolean newIngredients, Progress progress) {
        List<Found> chosen = found.recipes().stream()
                .filter(each -> which.contains(each.number()) && each.presence() != FoundRecipes.Presence.SAME)
                .toList();
        if (chosen.isEmpty()) {
            return new Taken(List.of(), List.of(), List.of("Nothing was chosen that the book does not have already."));
        }
        Map<String, Fresh> fresh = new LinkedHashMap<>();
        if (newIngredients) {
            chosen.forEach(each ->
                    each.lines().forEach(line -> line.fresh().ifPresent(item -> fresh.put(item.id(), item))));
        }
        LoadResult result = exchange.load(
                String.valueOf(found.file().getFileName()), form(chosen, fresh, newIngredients), progress);
        if (!result.written()) {
            return new Taken(
                    List.of(),
                    List.of(),
                    result.rejected().stream()
                            .map(each -> problem(each, chosen))
                            .toList());
        }
        List<String> ids = chosen.stream().map(each -> each.recipe().id()).toList();
        return new Taken(ids, List.copyOf(fresh.keySet()), List.of());
    }

    private static String problem(LoadResult.Rejected rejected, List<Found> chosen) {
        String[] parts = rejected.pointer().split("/");
        boolean recipe = parts.length > 2 && parts[1].equals(RecipeShelf.NAME) && parts[2].matches("\\d{1,6}");
        return (recipe ? chosen.get(Integer.parseInt(parts[2])).recipe().name() + ": " : "") + rejected.problem();
    }

    private String form(List<Found> chosen, Map<String, Fresh> fresh, boolean newIngredients) {
        ObjectNode form = RecipeForm.JSON.createObjectNode().put("etamine", "1");
        if (!fresh.isEmpty()) {
            ArrayNode ingredients = form.putArray("ingredients");
            fresh.values()
                    .forEach(item -> ingredients
                            .addObject()
                            .put("id", item.id())
                            .put("name", item.name())
                            .put("countIn", item.countIn().symbol())
                            .put("allergensKnown", false));
        }
        ArrayNode recipes = form.putArray(RecipeShelf.NAME);
        chosen.forEach(each -> recipes.add(entry(each, newIngredients)));
        Map<String, ObjectNode> pictured = new TreeMap<>();
        chosen.forEach(each -> each.photo()
                .map(EntryJson::read)
                .ifPresent(photo -> pictured.put(photo.path("id").asText(), photo)));
        pictured.keySet().removeAll(shelf.book().shelf(NamedPhotos.SHELF).ids());
        if (!pictured.isEmpty()) {
            form.putArray(NamedPhotos.SHELF).addAll(pictured.values());
        }
        return form.toString();
    }

    /** The entry, without the lines that stay out; they stand in its notes, so that nothing is lost. */
    private static ObjectNode entry(Found found, boolean newIngredients) {
        ObjectNode entry = EntryJson.read(found.entry());
        List<String> notes = new ArrayList<>();
        Set<Integer> out = new TreeSet<>(Comparator.reverseOrder());
        int use = 0;
        for (Line line : found.lines()) {
            boolean in = line.state() == State.CLEAR || newIngredients && line.state() == State.NEW;
            if (!in) {
                notes.add("Line not taken over: " + line.text());
            } else if (line.state() == State.NEW && line.remark().endsWith("in the notes.")) {
                notes.add("The line in full: " + line.text());
            }
            if (line.use().isPresent() && !in) {
                out.add(use);
            }
            use += line.use().isPresent() ? 1 : 0;
        }
        out.forEach(index -> ((ArrayNode) entry.path("uses")).remove(index));
        if (!notes.isEmpty()) {
            String before = entry.path("notes").asText("");
            entry.put("notes", (before.isEmpty() ? "" : before + "\n") + String.join("\n", notes));
        }
        return entry;
    }
}
