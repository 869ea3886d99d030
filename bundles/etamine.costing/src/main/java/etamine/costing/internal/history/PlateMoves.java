package etamine.costing.internal.history;

import etamine.costing.Moved;
import etamine.costing.Moved.PlateMove;
import etamine.costing.internal.engine.CostGraph;
import etamine.costing.internal.state.PlateMath;
import etamine.costing.internal.state.Terms;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which plates moved between two standpoints, by how much and why. A set of changes is a number of four bits: 1 price, 2
 * yield, 4 portion, 8 recipe.
 */
final class PlateMoves {
    private static final int PRICE = 1;
    private static final int SETS = 16;
    private static final BigDecimal UNSEEN = new BigDecimal("0.00005");

    private final Mixture mixture;
    private final Terms terms;
    private final PlateMath math;
    private final List<CostGraph.Figures> figures = new ArrayList<>();
    private final Causes causes;

    PlateMoves(Mixture mixture, Terms terms) {
        this.mixture = mixture;
        this.terms = terms;
        this.math = new PlateMath(terms);
        for (int set = 0; set < SETS; set++) {
            figures.add(figures(set));
        }
        this.causes = new Causes(mixture);
    }

    private CostGraph.Figures figures(int set) {
        for (int known = 0; known < figures.size(); known++) {
            if (structure(known) == structure(set) && (known & PRICE) == (set & PRICE)) {
                return figures.get(known);
            }
        }
        Standpoint prices = (set & PRICE) == 0 ? mixture.then() : mixture.now();
        return structure(set).compute(prices.quotes());
    }

    private Structure structure(int set) {
        return mixture.of(set >> 1);
    }

    /** The plates that moved, the largest rise first. */
    List<PlateMove> moves() {
        List<PlateMove> moves = new ArrayList<>();
        for (Recipe recipe : mixture.now().recipes().values()) {
            if (recipe.menu().isPresent() && !recipe.standing().archived()) {
                move(recipe).ifPresent(moves::add);
            }
        }
        moves.sort(Comparator.comparing(PlateMove::change).reversed().thenComparing(PlateMove::recipe));
        return moves;
    }

    private Optional<PlateMove> move(Recipe recipe) {
        MenuPrice menu = recipe.menu().orElseThrow();
        MenuPrice earlier = Optional.ofNullable(mixture.then().recipes().get(recipe.id()))
                .flatMap(Recipe::menu)
                .orElse(menu);
        double[] values = new double[SETS];
        for (int set = 0; set < SETS; set++) {
            values[set] = structure(set).plate(recipe.id(), set < SETS / 2 ? earlier : menu, figures.get(set));
        }
        double before = structure(0).portion(recipe.id(), figures.get(0));
        double after = structure(SETS - 1).portion(recipe.id(), figures.get(SETS - 1));
        if (!sound(before) || !sound(after)) {
            return Optional.empty();
        }
        PlateCost then = math.of(earlier, before, Double.NaN);
        PlateCost now = math.of(menu, after, Double.NaN);
        Money change = now.cost().minus(then.cost());
        List<Money> parts = Shares.exact(shares(values), change);
        boolean seen = parts.stream().anyMatch(part -> part.amount().abs().compareTo(UNSEEN) > 0);
        return seen ? Optional.of(move(recipe, then, now, Shares.effects(parts))) : Optional.empty();
    }

    /** Where some mix of old and new cannot be reckoned, the whole change counts as one of the recipe. */
    private static double[] shares(double[] values) {
        for (double value : values) {
            if (!sound(value)) {
                return new double[] {0, 0, 0, values[SETS - 1] - values[0]};
            }
        }
        return Shares.of(values);
    }

    private static boolean sound(double value) {
        return Math.abs(value) <= Double.MAX_VALUE;
    }

    private PlateMove move(Recipe recipe, PlateCost then, PlateCost now, Moved.Effects effects) {
        boolean complete = structure(0).complete(recipe.id(), figures.get(0))
                && structure(SETS - 1).complete(recipe.id(), figures.get(SETS - 1));
        return new PlateMove(
                recipe.id(),
                then.cost(),
                now.cost(),
                effects,
                causes.of(recipe, effects),
                !complete,
                Optional.empty(),
                now.foodCostPercent(),
                recipe.menu()
                        .flatMap(MenuPrice::targetFoodCostPercent)
                        .or(() -> terms.rules().targetFoodCostPercent()));
    }
}
