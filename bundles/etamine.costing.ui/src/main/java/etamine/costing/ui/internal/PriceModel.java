package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.costing.Experiment;
import etamine.costing.PriceAdvice;
import etamine.costing.PriceQuestion;
import etamine.costing.PriceRounding;
import etamine.costing.PriceTarget;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to charge for a plate of the book, or for one that is only a cost so far. */
final class PriceModel {
    private static final BigDecimal USUAL = new BigDecimal("30");
    private final CostingParts parts;

    PriceModel(CostingParts parts) {
        this.parts = parts;
    }

    /** Ways to come to a price. */
    enum Way {
        FOOD_COST("Food cost, % of the net price"),
        CONTRIBUTION("Contribution, an amount"),
        PRIME_COST("Prime cost, % of the net price"),
        FACTOR("Factor on the cost");

        private final String label;

        Way(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }

        PriceTarget target(BigDecimal figure) {
            return switch (this) {
                case FOOD_COST -> new PriceTarget.FoodCost(figure);
                case CONTRIBUTION -> new PriceTarget.Contribution(figure);
                case PRIME_COST -> new PriceTarget.PrimeCost(figure);
                case FACTOR -> new PriceTarget.Factor(figure);
            };
        }
    }

    /**
     * What is asked.
     *
     * @param recipe the plate; empty for one that is not in the book
     * @param cost what one portion costs
     * @param way how to come to a price
     * @param figure the percentage, amount or factor
     * @param tax in percent
     * @param taxIncluded whether menu prices include it
     * @param rounding to which side the price goes
     */
    record Asked(
            Optional<String> recipe,
            Money cost,
            Way way,
            BigDecimal figure,
            BigDecimal tax,
            boolean taxIncluded,
            PriceRounding.Way rounding) {}

    /** The cost of one portion as the book has it, as it is shown; answers are reckoned with the unrounded one. */
    Optional<Money> cost(String recipe) {
        return parts.costs()
                .recipe(recipe)
                .flatMap(cost -> cost.plate().map(PlateCost::cost).or(cost::portion))
                .map(Money::rounded);
    }

    /** The tax of a plate; that of the first one on the menu where it has none. */
    BigDecimal tax(Optional<String> recipe) {
        return recipe.flatMap(parts::recipe)
                .flatMap(Recipe::menu)
                .or(() -> parts.recipes().get().stream()
                        .flatMap(known -> known.all().values().stream())
                        .flatMap(other -> other.menu().stream())
                        .findFirst())
                .map(MenuPrice::taxPercent)
                .orElse(BigDecimal.ZERO);
    }

    /** The target the kitchen has set, or a round figure to start from. */
    BigDecimal start(Optional<String> recipe, Way way) {
        return switch (way) {
            case FOOD_COST ->
                recipe.map(parts::target)
                        .orElseGet(() -> parts.settings().rules().targetFoodCostPercent())
                        .orElse(USUAL);
            case CONTRIBUTION -> BigDecimal.TEN;
            case PRIME_COST -> new BigDecimal("60");
            case FACTOR -> new BigDecimal("3.5");
        };
    }

    PriceRounding.Way rounding() {
        return PriceRounding.of(parts.settings().rules()).way();
    }

    /** What prices may end in, in words. */
    String endings() {
        List<BigDecimal> endings = parts.settings().rules().endings();
        return endings.isEmpty()
                ? "smallest coin"
                : "price that ends in "
                        + String.join(
                                " or ",
                                endings.stream().map(BigDecimal::toPlainString).toList());
    }

    /**
     * The answer.
     *
     * @throws IllegalArgumentException with a sentence, where there is none
     */
    PriceAdvice advise(Asked asked) {
        PriceTarget target = asked.way().target(asked.figure());
        PriceRounding rounding =
                new PriceRounding(asked.rounding(), parts.settings().rules().endings());
        PriceQuestion question = asked.recipe()
                .filter(recipe -> cost(recipe).filter(asked.cost()::equals).isPresent())
                .map(recipe -> parts.pricing().about(recipe, target))
                .orElseGet(() -> PriceQuestion.of(asked.cost(), asked.tax(), target, rounding));
        return parts.pricing().advise(question.withRounding(rounding).withTax(asked.tax(), asked.taxIncluded()));
    }

    /** The answer as rows of name and figure. */
    List<Explanation> rows(PriceAdvice advice) {
        Figures figures = parts.figures();
        List<Explanation> rows = new ArrayList<>();
        rows.add(Explanation.leaf("Without tax", figures.full(advice.net()), "meets the target exactly"));
        rows.add(Explanation.leaf(
                "With tax",
                figures.full(advice.gross()),
                Figures.percentAsWritten(advice.question().taxPercent()) + " tax"));
        rows.add(Explanation.leaf("Net of the menu price", figures.full(advice.menuNet()), ""));
        rows.add(Explanation.leaf(
                "Food cost then",
                advice.foodCostPercent().map(Figures::percent).orElse(Figures.NONE),
                "of " + figures.full(advice.question().cost())));
        advice.primeCostPercent()
                .ifPresent(percent -> rows.add(
                        Explanation.leaf("Prime cost then", Figures.percent(percent), "cost and hands-on work")));
        rows.add(Explanation.leaf("Contribution then", figures.full(advice.contribution()), "a cover"));
        return rows;
    }

    /** The price on the menu now. */
    Optional<BigDecimal> now(String recipe) {
        return parts.recipe(recipe).flatMap(Recipe::menu).map(MenuPrice::price);
    }

    String full(Money money) {
        return parts.figures().full(money);
    }

    /** Writes a price on the menu; answers what a person should know of it. */
    List<String> write(String recipe, BigDecimal price) {
        return parts.experiments().accept(Experiment.none().withMenuPrice(recipe, price));
    }
}
