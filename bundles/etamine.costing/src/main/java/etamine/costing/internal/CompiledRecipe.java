package etamine.costing.internal;

import etamine.base.Problem;
import etamine.kitchen.recipe.Recipe;
import java.util.List;

/**
 * A recipe with every quantity resolved to a number of its item's reckoning unit (g, ml, one piece, one portion or one
 * own word). Arrays are never changed after construction.
 *
 * @param recipe what it was compiled from
 * @param lines for each line used, how much as purchased; not a number where it cannot be converted
 * @param outputs for each thing made, how much
 * @param shares for each thing made without a credit, its share of what remains of the cost, the shares adding up to 1;
 *     0 for credited ones; not a number where weights are missing
 * @param credits for each thing made, the value taken out of the batch; 0 without a credit
 * @param problems what could not be resolved
 */
record CompiledRecipe(
        Recipe recipe, double[] lines, double[] outputs, double[] shares, double[] credits, List<Problem> problems) {}
