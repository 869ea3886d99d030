package etamine.kitchen.recipe;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How a recipe stands on the menu.
 *
 * @param price what the guest pays, tax included
 * @param taxPercent tax within that price, in percent of the net price; 0 when none
 * @param qFactorPercent added to the cost for ingredients too small to measure, in percent of the cost; 0 when none
 * @param qFactorAmount added to the cost of each portion for what accompanies every plate; 0 when none
 * @param packaging packaging and garnish of each portion; 0 when none
 * @param targetFoodCostPercent the food cost it should not go above; the kitchen's own target when empty
 */
public record MenuPrice(
        BigDecimal price,
        BigDecimal taxPercent,
        BigDecimal qFactorPercent,
        BigDecimal qFactorAmount,
        BigDecimal packaging,
        Optional<BigDecimal> targetFoodCostPercent) {

    /** A price without allowances in amounts and without a target of its own. */
    public MenuPrice(BigDecimal price, BigDecimal taxPercent, BigDecimal qFactorPercent) {
        this(price, taxPercent, qFactorPercent, BigDecimal.ZERO, BigDecimal.ZERO, Optional.empty());
    }

    /** The same at another price. */
    public MenuPrice withPrice(BigDecimal changed) {
        return new MenuPrice(changed, taxPercent, qFactorPercent, qFactorAmount, packaging, targetFoodCostPercent);
    }

    /** The same with another tax. */
    public MenuPrice withTaxPercent(BigDecimal changed) {
        return new MenuPrice(price, changed, qFactorPercent, qFactorAmount, packaging, targetFoodCostPercent);
    }

    /** The same with another percentage for what is too small to measure. */
    public MenuPrice withQFactorPercent(BigDecimal changed) {
        return new MenuPrice(price, taxPercent, changed, qFactorAmount, packaging, targetFoodCostPercent);
    }

    /** The same with another amount for what accompanies every plate. */
    public MenuPrice withQFactorAmount(BigDecimal changed) {
        return new MenuPrice(price, taxPercent, qFactorPercent, changed, packaging, targetFoodCostPercent);
    }

    /** The same with other packaging. */
    public MenuPrice withPackaging(BigDecimal changed) {
        return new MenuPrice(price, taxPercent, qFactorPercent, qFactorAmount, changed, targetFoodCostPercent);
    }

    /** The same with another target. */
    public MenuPrice withTarget(Optional<BigDecimal> changed) {
        return new MenuPrice(price, taxPercent, qFactorPercent, qFactorAmount, packaging, changed);
    }
}
