package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * What a recipe was before. Nothing is ever overwritten, so every revision can be read, compared and brought back.
 * Thread-safe.
 */
@ProviderType
public interface Revisions {

    /** All revisions of a recipe, newest first; empty when there never was one of that id. */
    List<Revision> of(String recipe);

    /** What differs between two states of a recipe, in the order of the card; empty when nothing does. */
    List<Difference> between(Recipe older, Recipe newer);

    /**
     * Writes a former revision again as the newest, with every member it had. Refused when it could not be made beside
     * the other recipes as they are now.
     *
     * @throws etamine.storage.BookException when the medium fails or somebody changes the recipe meanwhile
     */
    Change restore(String recipe, long number);
}
