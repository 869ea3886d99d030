package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.util.List;
import java.util.Map;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Scales recipes exactly and linearly; nothing is rounded but what stands beside the exact amount. A recipe that is only
 * made in whole batches gets the fewest that are enough, or of what is on hand the most that it allows. Thread-safe.
 */
@ProviderType
public interface Scaling {

    /** A recipe for so much of the first thing it makes; the amount may be in any unit its measures reach. */
    Scaled to(String recipe, Quantity amount);

    /** A recipe for so many portions, one for each cover. */
    Scaled forCovers(String recipe, Ratio covers);

    /** A recipe that fills these vessels. */
    Scaled forVessels(String recipe, List<Filled> vessels);

    /**
     * The largest batch that what is on hand allows, and which of it is the limit. What is not named is taken to be
     * there in plenty.
     *
     * @param have items the recipe uses and how much of each there is as purchased, in any unit their measures reach
     */
    Scaled fromOnHand(String recipe, Map<String, Quantity> have);

    /** The recipe with every quantity multiplied; times {@code 1/k} after times {@code k} gives an equal recipe. */
    Recipe times(Recipe recipe, Ratio factor);

    /** What a cook would measure for an amount, in the unit it is written in or one of the same family. */
    Practical practical(Quantity exact);
}
