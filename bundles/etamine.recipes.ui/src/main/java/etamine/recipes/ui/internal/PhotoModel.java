package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Change;
import etamine.recipes.RecipePhotos;
import etamine.recipes.RecipePhotos.Photo;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** What the bench shows of the photo of a recipe and does with it, without widgets. Safe on any thread. */
final class PhotoModel {
    static final String ADD = "add";
    static final String PASTE = "paste";
    static final String LARGER = "larger";
    static final String SAVE = "save";
    static final String REMOVE = "remove";

    private static final String WITHOUT =
            "<a href=\"add\">Add a photo\u2026</a>, drop one here or" + " <a href=\"paste\">paste</a> it.";
    private static final String WITH = "<a href=\"larger\">Larger</a>   <a href=\"add\">Replace\u2026</a>   "
            + "<a href=\"paste\">Paste</a>   <a href=\"save\">Save\u2026</a>   <a href=\"remove\">Remove</a>";

    private final Supplier<Optional<RecipePhotos>> photos;

    PhotoModel(Supplier<Optional<RecipePhotos>> photos) {
        this.photos = photos;
    }

    /**
     * What is shown of a recipe's photo.
     *
     * @param recipe the recipe's id
     * @param photo the photo, as small as it is shown
     * @param links what can be done, as links
     * @param remark what is wrong; empty when nothing is
     */
    record View(String recipe, Optional<Photo> photo, String links, String remark) {
        /** What a screen reader calls the photo. */
        String spoken(String name) {
            return photo.map(Photo::text).filter(text -> !text.isEmpty()).orElse("Photo of " + name);
        }
    }

    /** Whether photos can be kept at all just now. */
    boolean isThere() {
        return photos.get().isPresent();
    }

    /** What is shown before the book was asked. */
    View empty(Recipe recipe) {
        return new View(recipe.id(), Optional.empty(), recipe.photo().isEmpty() ? WITHOUT : "", "");
    }

    /** Reads the photo of a recipe from the book, as many pixels of it as are shown. */
    View read(Recipe recipe, int edge) {
        Optional<Photo> photo = photos.get().flatMap(all -> all.find(recipe.id(), edge));
        boolean missing = photo.isEmpty() && recipe.photo().isPresent();
        String remark = missing
                ? "The photo this recipe names is not in the book; add it again, or load the file it was in."
                : "";
        return new View(recipe.id(), photo, photo.isEmpty() ? WITHOUT : WITH, remark);
    }

    Change attach(String recipe, Path file) {
        return with(all -> all.attach(recipe, file, ""));
    }

    Change attach(String recipe, byte[] file) {
        return with(all -> all.attach(recipe, file, ""));
    }

    Change describe(String recipe, String text) {
        return with(all -> all.describe(recipe, text));
    }

    Change remove(String recipe) {
        return with(all -> all.remove(recipe));
    }

    Path save(String recipe, Path file) throws IOException {
        service().save(recipe, file);
        return file;
    }

    private Change with(Function<RecipePhotos, Change> act) {
        return act.apply(service());
    }

    private RecipePhotos service() {
        return photos.get()
                .orElseThrow(() -> new IllegalStateException(
                        "Photos cannot be kept just now; start the module for papers again."));
    }

    /**
     * A size within another.
     *
     * @param width how wide
     * @param height how tall
     */
    record Size(int width, int height) {
        /** The largest size of that shape that fits, never larger than itself. */
        Size within(int widest, int tallest) {
            double scale = Math.min(1, Math.min((double) widest / width, (double) tallest / height));
            return new Size(
                    Math.max(1, (int) Math.round(width * scale)), Math.max(1, (int) Math.round(height * scale)));
        }
    }
}
