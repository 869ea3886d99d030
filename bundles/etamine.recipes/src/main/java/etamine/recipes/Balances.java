package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import org.osgi.annotation.versioning.ProviderType;

/** Weighs what goes into a recipe against what comes out, with the items as they are now. Thread-safe. */
@ProviderType
public interface Balances {

    /** The balance of one batch; the recipe need not be saved. */
    MassBalance of(Recipe recipe);
}
