package etamine.recipes;

import etamine.base.Problem;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Writes the recipes of the open book; {@link etamine.kitchen.recipe.Recipes} reads them. Thread-safe. Every change is
 * one transaction with a label for undo; it throws {@link etamine.storage.BookException} when the medium fails or
 * somebody else has changed the recipe since it was read.
 */
@ProviderType
public interface RecipeBook {

    /** The revision to save against; 0 when there is none of that id. */
    long revision(String id);

    /**
     * Everything wrong or doubtful about a recipe as it would stand beside the others: units without a measure, unknown
     * items and preparations, loops, more out than in.
     */
    List<Problem> problems(Recipe recipe);

    /** The same problems, each with its place in the recipe. */
    List<PlacedProblem> placed(Recipe recipe);

    /**
     * Adds or changes a recipe. Refused when it could not be made at all: without a name, without anything made, with
     * amounts that are not more than zero, or in a loop. Other problems are kept and shown, so that work may be left
     * half done.
     *
     * @param expected the revision it was read at; 0 for a new one
     */
    Change save(Recipe recipe, long expected);

    /** Removes a recipe; refused with the list of uses while another recipe uses what only it makes. */
    Change remove(String id);

    /** Adds a copy under a new name; what it makes under its own id, it makes under the new one. */
    Change copy(String id, String name);

    /**
     * Puts a recipe away or takes it out again. An archived one is left out of lists, completion and the menu, but what
     * uses it still finds it.
     */
    Change archive(String id, boolean archived);

    /** An empty recipe of that kind that makes an item of its own; not saved yet. */
    Recipe start(String name, Kind kind);
}
