package etamine.recipes;

import etamine.kitchen.yield.Spread;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.util.Optional;

/**
 * What the tests of a recipe say of one thing it makes.
 *
 * @param item the thing made
 * @param name its name
 * @param written its share of what goes into a batch as the recipe has it now; empty when it cannot be weighed
 * @param measured its share of what went in over the tests that weighed it; empty when none did
 * @param working what a batch would give by the mean, rounded half up to a tenth of a gram, in the unit the recipe
 *     makes it in; empty when it cannot be reckoned
 */
public record MeasuredYield(
        String item, String name, Optional<Ratio> written, Optional<Spread> measured, Optional<Quantity> working) {}
