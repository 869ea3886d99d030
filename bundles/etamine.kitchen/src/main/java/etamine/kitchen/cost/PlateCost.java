package etamine.kitchen.cost;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A recipe on the menu, one portion of it.
 *
 * @param cost what it costs with both Q factors and packaging, unrounded
 * @param net menu price without tax, unrounded
 * @param foodCostPercent cost over net price, in percent, two decimals; empty when the net price is zero
 * @param contribution net price less cost, unrounded
 * @param parts what the cost consists of
 * @param labour the hands-on work in it, unrounded; empty while the kitchen does not cost work
 * @param target the food cost it should not go above, in percent; empty when there is none
 */
public record PlateCost(
        Money cost,
        Money net,
        Optional<BigDecimal> foodCostPercent,
        Money contribution,
        Parts parts,
        Optional<Money> labour,
        Optional<BigDecimal> target) {

    /** A plate without allowances, labour or target. */
    public PlateCost(Money cost, Money net, Optional<BigDecimal> foodCostPercent, Money contribution) {
        this(cost, net, foodCostPercent, contribution, Parts.of(cost), Optional.empty(), Optional.empty());
    }

    /**
     * What a plate's cost consists of; the four add up to it.
     *
     * @param food what the recipe costs line by line
     * @param qFactorShare the Q factor as a percentage of that, for ingredients too small to measure
     * @param qFactorAmount the Q factor as an amount, for what accompanies every plate
     * @param packaging packaging and garnish
     */
    public record Parts(Money food, Money qFactorShare, Money qFactorAmount, Money packaging) {

        /** Food alone. */
        public static Parts of(Money food) {
            Money none = Money.zero(food.currency());
            return new Parts(food, none, none, none);
        }
    }

    /** Cost and work together; empty while the kitchen does not cost work. */
    public Optional<Money> prime() {
        return labour.map(cost::plus);
    }

    /** Whether it costs more than its target allows. */
    public boolean overTarget() {
        return target.isPresent()
                && foodCostPercent
                        .filter(percent -> percent.compareTo(target.get()) > 0)
                        .isPresent();
    }
}
