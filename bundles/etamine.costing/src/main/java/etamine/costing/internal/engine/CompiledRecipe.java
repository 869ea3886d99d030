package etamine.costing.internal.engine;

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
 * @param portion how much of the main thing one portion is; not a number when it has none
 * @param byMarketValue whether the shares go by market value rather than by weight
 * @param problems what could not be resolved
 */
public record CompiledRecipe(
        Recipe recipe,
        double[] lines,
        double[] outputs,
        double[] shares,
        double[] credits,
        double portion,
        boolean byMarketValue,
        List<Problem> problems) {

    /** What one portion of the main thing carries of a batch's amount; credits are taken out of money first. */
    public double portionOf(double batch, boolean withCredits) {
        return outputs.length == 0 ? Double.NaN : each(0, batch, withCredits) * portion;
    }

    /** What one reckoning unit of a thing made carries of a batch's amount. */
    public double each(int output, double batch, boolean withCredits) {
        double rest = batch;
        if (withCredits) {
            for (double credit : credits) {
                rest -= credit;
            }
            return (credits[output] + rest * shares[output]) / outputs[output];
        }
        return rest * shares[output] / outputs[output];
    }

    public double creditSum() {
        double sum = 0;
        for (double credit : credits) {
            sum += credit;
        }
        return sum;
    }
}
