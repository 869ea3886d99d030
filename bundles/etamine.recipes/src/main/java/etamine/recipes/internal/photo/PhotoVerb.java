package etamine.recipes.internal.photo;

import etamine.base.Problem;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.recipes.Change;
import etamine.recipes.RecipePhotos;
import etamine.recipes.RecipePhotos.Photo;
import etamine.recipes.internal.NamedPhotos;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows, sets, saves and removes the photo of a recipe: {@code photo RECIPE [FILE]}. */
@Component
public final class PhotoVerb implements Verb {
    private final Recipes recipes;
    private final RecipePhotos photos;

    /** Works on those photos. */
    @Activate
    public PhotoVerb(@Reference Recipes recipes, @Reference RecipePhotos photos) {
        this.recipes = recipes;
        this.photos = photos;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("photo", "the photo of a recipe: shows it, or sets it from a file", "ID", "[FILE]")
                .with("--text", "TEXT", "what is seen on it, for those who do not see it")
                .with("--save", "FILE", "write a copy of it as JPEG")
                .with("--remove", "", "take it away");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        Recipe recipe = recipe(call);
        boolean file = call.arguments().size() == 2;
        int wishes = (file ? 1 : 0) + (call.has("--save") ? 1 : 0) + (call.has("--remove") ? 1 : 0);
        if (wishes > 1 || call.has("--text") && wishes > 0 && !file) {
            throw VerbException.wrongCall("Say one thing at a time: a FILE to add, --save FILE or --remove.");
        }
        if (call.has("--save")) {
            return saved(recipe, call.file(call.option("--save").orElseThrow()));
        }
        if (call.has("--remove")) {
            return changed(recipe, photos.remove(recipe.id()), recipe.name() + " has no photo.");
        }
        String text = call.option("--text").orElse("");
        if (file) {
            Change change =
                    photos.attach(recipe.id(), call.file(call.arguments().get(1)), text);
            return changed(recipe, change, "Added the photo of " + recipe.name() + ". " + RecipePhotos.KEPT);
        }
        return call.has("--text")
                ? changed(recipe, photos.describe(recipe.id(), text), "Changed what is said of the photo.")
                : shown(recipe);
    }

    private Recipe recipe(VerbCall call) throws VerbException {
        if (call.arguments().isEmpty() || call.arguments().size() > 2) {
            throw VerbException.wrongCall("Name one recipe by its id, and a file to add its photo: photo ID [FILE].");
        }
        String id = call.arguments().get(0);
        return recipes.find(id)
                .orElseThrow(() ->
                        VerbException.wrongCall("There is no recipe “" + id + "”; the verb recipes lists them all."));
    }

    private Report shown(Recipe recipe) {
        Optional<Photo> photo = photos.find(recipe.id());
        String line = photo.map(found -> found.width() + " x " + found.height() + " pixels, "
                        + Math.max(1, found.bytes().length / 1000) + " kB"
                        + (found.text().isEmpty() ? "; nothing is said of it" : ": " + found.text()))
                .orElseGet(() -> recipe.photo()
                        .map(id -> NamedPhotos.missing(recipe.name(), id))
                        .orElseGet(() -> recipe.name() + " has no photo."));
        return Report.done(json(recipe.id(), photo), List.of(line));
    }

    private Report saved(Recipe recipe, Path file) throws VerbException {
        Photo photo =
                photos.find(recipe.id()).orElseThrow(() -> VerbException.wrongCall(BookPhotos.none(recipe.name())));
        try {
            photos.save(recipe.id(), file);
        } catch (IOException failed) {
            throw VerbException.wrongCall(file + " cannot be written: " + failed.getMessage() + ".");
        }
        Map<String, Object> json = json(recipe.id(), Optional.of(photo));
        json.put("file", file.toString());
        return Report.done(json, List.of("Wrote the photo of " + recipe.name() + " to " + file + "."));
    }

    private Report changed(Recipe recipe, Change change, String done) throws VerbException {
        if (change instanceof Change.Refused refused) {
            throw VerbException.rejected(
                    refused.problems().stream().map(Problem::text).collect(Collectors.joining(" ")));
        }
        Map<String, Object> json = json(recipe.id(), photos.find(recipe.id()));
        json.put("revision", ((Change.Done) change).revision());
        return Report.done(json, List.of(done));
    }

    private static Map<String, Object> json(String recipe, Optional<Photo> photo) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", recipe);
        json.put("photo", photo.map(PhotoVerb::json));
        return json;
    }

    private static Object json(Photo photo) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", photo.id());
        json.put("width", photo.width());
        json.put("height", photo.height());
        json.put("bytes", photo.bytes().length);
        json.put("text", photo.text());
        return json;
    }
}
