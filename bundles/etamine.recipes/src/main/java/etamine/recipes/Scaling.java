package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import org.osgi.annotation.versioning.ProviderType;

/** Scales recipes exactly and linearly; nothing is rounded. Thread-safe. */
@ProviderType
public interface Scaling {

    /** A recipe for so much of the first thing it makes; the amount may be in any unit its measures reach. */
    Scaled to(String recipe, Quantity amount);

    /** A recipe for so many portions, one for each cover. */
    Scaled forCovers(String recipe, Ratio covers);

    /** The recipe with every quantity multiplied; times {@code 1/k} after times {@code k} gives an equal recipe. */
    Recipe times(Recipe recipe, Ratio factor);
}
