package etamine.recipes;

import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Recipe;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Tries and weighed tests of recipes, and what they say of their yields. Thread-safe. Every change is one transaction
 * with a label for undo; it throws {@link etamine.storage.BookException} when the medium fails.
 */
@ProviderType
public interface Trials {

    /** How far a recipe is to be trusted and what is missing; it need not be saved. */
    Trust trust(Recipe recipe);

    /** Counts one more making of the recipe with the same result. */
    Change tried(String recipe);

    /** Adds a weighed test; refused when nothing went in, nothing came out or something cannot be weighed. */
    Change record(String recipe, BatchTest test);

    /** Takes a test out again; the yields that stand on it stay. */
    Change forget(String recipe, int test);

    /** What the tests of a recipe say of each thing it makes, in the order it makes them. */
    List<MeasuredYield> measured(Recipe recipe);

    /**
     * Makes the mean of the given tests the working yield: every thing they weighed is written as its mean share of
     * what goes into a batch, rounded half up to a tenth of a gram. These tests are marked as accepted and no others.
     *
     * @param tests places in the recipe's list of tests; all tests when empty
     */
    Change accept(String recipe, List<Integer> tests);
}
