package etamine.ingredients;

import etamine.base.Problem;
import etamine.kitchen.recipe.Recipe;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The ingredient list of the open book. Thread-safe; collections are immutable snapshots. Every change is one
 * transaction with a label for undo; it throws {@link etamine.storage.BookException} when the medium fails or somebody
 * else has changed the ingredient since it was read.
 */
@ProviderType
public interface IngredientList {

    /** All ingredients by id. */
    Map<String, Ingredient> all();

    /** One ingredient. */
    Optional<Ingredient> find(String id);

    /** The revision to save against; 0 when there is none of that id. */
    long revision(String id);

    /** What is wrong or doubtful about it; saving is refused only for errors. */
    List<Problem> problems(Ingredient ingredient);

    /**
     * Adds or changes an ingredient.
     *
     * @param expected the revision it was read at; 0 for a new one
     */
    Change save(Ingredient ingredient, long expected);

    /** Removes an ingredient; refused with the list of uses while recipes use it. */
    Change remove(String id);

    /** The recipes that use it; none when there is no recipe module. */
    List<Recipe> usedIn(String id);

    /** An identifier made from a name, not in use yet. */
    String freshId(String name);
}
