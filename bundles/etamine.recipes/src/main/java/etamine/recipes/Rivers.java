package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Follows weight through the recipes of any depth. Where nothing of a recipe can be weighed but everything can be
 * measured by volume, as in drinks, volume is followed instead. Things that a batch makes together and the recipe does
 * not need flow on to other uses. Thread-safe.
 */
@ProviderType
public interface Rivers {

    /** The river of one portion of a recipe, saved or not; of one batch where its portion has no known size. */
    River portion(Recipe recipe);

    /** The river of one batch of a recipe, saved or not. */
    River batch(Recipe recipe);
}
