package etamine.costing.internal.state;

import etamine.base.Problem;
import etamine.costing.CostRules;
import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.CostGraph;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** The hands-on work in every recipe: each step's time at the rate of its station, carried through the graph. */
public final class Work {
    private static final double SECONDS_AN_HOUR = 3600;

    private final CostRules.Labour rates;
    private final ToIntFunction<String> places;
    private final double[] own;
    private final double[] batch;

    /**
     * Reckons the work.
     *
     * @param places where a recipe stands in the graph
     */
    Work(List<CompiledRecipe> order, CostGraph graph, CostRules.Labour rates, Map<String, Integer> places) {
        this.rates = rates;
        this.places = places::get;
        this.own = new double[order.size()];
        for (int r = 0; r < own.length; r++) {
            own[r] = own(order.get(r).recipe());
        }
        this.batch = graph.carried(own);
    }

    private double own(Recipe recipe) {
        double sum = 0;
        for (Step step : recipe.steps()) {
            sum += rate(recipe, step).map(BigDecimal::doubleValue).orElse(0.0)
                    * seconds(step.hands())
                    / SECONDS_AN_HOUR;
        }
        return sum;
    }

    private Optional<BigDecimal> rate(Recipe recipe, Step step) {
        return rates.rate(station(recipe, step));
    }

    private static String station(Recipe recipe, Step step) {
        return step.station().isEmpty() ? recipe.making().station() : step.station();
    }

    private static double seconds(Duration time) {
        return time.getSeconds() + time.getNano() / 1e9;
    }

    /** What the work of one batch costs, everything made for it included. */
    public double batch(Recipe recipe) {
        return batch[places.applyAsInt(recipe.id())];
    }

    /** The same of every recipe, in graph order; not to be changed. */
    public double[] batches() {
        return batch;
    }

    /** What the recipe's own steps cost. */
    public double ownOf(Recipe recipe) {
        return own[places.applyAsInt(recipe.id())];
    }

    /** The same work where recipes give other amounts. */
    public double[] carriedBy(CostGraph other) {
        return other.carried(own);
    }

    /** Steps whose station has no rate. */
    public List<Problem> problems(Recipe recipe) {
        List<Problem> problems = new ArrayList<>();
        for (Step step : recipe.steps()) {
            if (!step.hands().isZero() && rate(recipe, step).isEmpty()) {
                String station = station(recipe, step);
                problems.add(Problem.warning(
                        "missing-rate",
                        "recipes/" + recipe.id(),
                        recipe.name() + ", step " + step.id() + ": an hour "
                                + (station.isEmpty() ? "of work" : "at the station " + station)
                                + " has no rate, so its work is missing. Set one in the rules of costing."));
            }
        }
        return problems;
    }
}
