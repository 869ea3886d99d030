package etamine.recipes;

import etamine.base.Progress;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Recipes in files that other programs read: schema.org/Recipe as JSON-LD. What the standard has no word for stands
 * beside it in a member of this program's own, so that nothing is lost on the way back. Nothing named in a file is ever
 * fetched. Thread-safe.
 */
@ProviderType
public interface RecipeFiles {

    /**
     * Writes recipes to one file, which is complete or absent. Their photos are in it, up to 48 MB; what a recipe names
     * beyond stays in the book.
     *
     * @param recipes ids; none for all that are not archived
     * @return the ids written
     * @throws IllegalArgumentException with a sentence when there is no recipe of one of the ids
     */
    List<String> write(List<String> recipes, Path file) throws IOException;

    /**
     * Reads a file and says what would become of it; the book is not changed. A web page is read for the recipes in it.
     */
    FoundRecipes read(Path file, Progress progress);

    /**
     * Puts recipes that were found into the book as one change that can be undone. Lines that are not understood, and
     * with them lines of ingredients that are not to be added, stand in the recipe's notes.
     *
     * @param which numbers of recipes, as found
     * @param newIngredients whether to add the ingredients that the book does not have
     * @throws etamine.storage.BookException when the medium fails
     */
    Taken take(FoundRecipes found, Set<Integer> which, boolean newIngredients, Progress progress);

    /**
     * What was put into the book.
     *
     * @param recipes ids of recipes added or changed; empty when there are problems
     * @param ingredients ids of ingredients added
     * @param problems why nothing was put into the book, as sentences; empty when it was
     */
    record Taken(List<String> recipes, List<String> ingredients, List<String> problems) {

        /** Copies the lists. */
        public Taken {
            recipes = List.copyOf(recipes);
            ingredients = List.copyOf(ingredients);
            problems = List.copyOf(problems);
        }
    }
}
