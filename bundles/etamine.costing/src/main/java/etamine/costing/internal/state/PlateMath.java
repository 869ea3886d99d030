package etamine.costing.internal.state;

import etamine.costing.internal.engine.Reckoning;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.recipe.MenuPrice;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** From what one portion costs to what a plate costs and leaves. Exact but for the one rounding of each engine number. */
public final class PlateMath {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int PLACES = 10;

    private final Terms terms;

    public PlateMath(Terms terms) {
        this.terms = terms;
    }

    /**
     * The figures of one portion.
     *
     * @param menu how it is sold
     * @param portion what the recipe costs line by line, as the engine has it
     * @param labour the work in it, as the engine has it; not a number while work is not costed
     */
    public PlateCost of(MenuPrice menu, double portion, double labour) {
        Money food = Reckoning.money(portion, terms.currency());
        PlateCost.Parts parts = new PlateCost.Parts(
                food,
                money(food.amount().multiply(menu.qFactorPercent().movePointLeft(2))),
                money(menu.qFactorAmount()),
                money(menu.packaging()));
        Money cost = food.plus(parts.qFactorShare()).plus(parts.qFactorAmount()).plus(parts.packaging());
        Money net = net(menu);
        return new PlateCost(
                cost,
                net,
                percent(cost, net),
                net.minus(cost),
                parts,
                Double.isNaN(labour) ? Optional.empty() : Optional.of(Reckoning.money(labour, terms.currency())),
                menu.targetFoodCostPercent().or(() -> terms.rules().targetFoodCostPercent()));
    }

    /** What an engine number for one portion comes to with the allowances, still as the engine has it. */
    public static double withAllowances(MenuPrice menu, double portion) {
        return portion * (1 + menu.qFactorPercent().doubleValue() / 100)
                + menu.qFactorAmount().doubleValue()
                + menu.packaging().doubleValue();
    }

    private Money net(MenuPrice menu) {
        return menu.taxPercent().signum() == 0
                ? money(menu.price())
                : money(menu.price()
                        .divide(
                                BigDecimal.ONE.add(menu.taxPercent().movePointLeft(2)),
                                PLACES,
                                RoundingMode.HALF_EVEN));
    }

    private Money money(BigDecimal amount) {
        return new Money(amount, terms.currency());
    }

    /** A cost over a net price in percent, rounded half up to two decimals; empty for a net price of nothing. */
    public static Optional<BigDecimal> percent(Money cost, Money net) {
        return net.signum() == 0
                ? Optional.empty()
                : Optional.of(cost.amount().multiply(HUNDRED).divide(net.amount(), 2, RoundingMode.HALF_UP));
    }
}
