package etamine.recipes;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * One photo for each recipe, kept in the book as a small JPEG. Every change is one transaction together with the
 * recipe, with a label for undo; a photo that no recipe names any more goes with it, and comes back with undo or with a
 * former revision of the recipe. Photos are read from the book when they are asked for and never held, and taking one in
 * may take a second or two: call it in the background. Thread-safe. Every method throws
 * {@link etamine.storage.BookException} when the medium fails.
 */
@ProviderType
public interface RecipePhotos {

    /** What is taken in, as people read it. */
    String TAKEN = "JPEG, PNG, GIF or BMP, at most 25 MB and 60 million pixels";

    /** What becomes of a photo, as people read it. */
    String KEPT = "It is turned upright and made smaller; where and with what it was taken is not kept.";

    /** The most characters of what is said of a photo. */
    int LONGEST_TEXT = 2_000;

    /** The photo of a recipe; empty when it has none, or names one that is not in the book. */
    Optional<Photo> find(String recipe);

    /**
     * The same to be shown small.
     *
     * @param edge the longer edge in pixels that is enough
     */
    Optional<Photo> find(String recipe, int edge);

    /**
     * Gives a recipe a photo in place of the one it has.
     *
     * @param file the picture's file: {@link #TAKEN}
     * @param text what is seen on it, for those who do not see it; empty when not said
     */
    Change attach(String recipe, byte[] file, String text);

    /** The same with a file on disk. */
    Change attach(String recipe, Path file, String text);

    /** Says what is seen on a recipe's photo; of every recipe that has this photo. */
    Change describe(String recipe, String text);

    /** Takes the photo from a recipe; nothing happens when it has none. */
    Change remove(String recipe);

    /**
     * Writes a copy of a recipe's photo, which is complete or absent.
     *
     * @throws IOException with what is wrong, also when there is no photo
     */
    void save(String recipe, Path file) throws IOException;

    /**
     * A photo.
     *
     * @param id its identifier
     * @param text what is seen on it; empty when not said
     * @param base64 the whole JPEG file in base64
     * @param width in pixels
     * @param height in pixels
     */
    record Photo(String id, String text, String base64, int width, int height) {

        /** The JPEG file. */
        public byte[] bytes() {
            return Base64.getDecoder().decode(base64);
        }
    }
}
