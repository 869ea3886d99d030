package etamine.kitchen.recipe;

import java.math.BigDecimal;

/**
 * How a recipe stands on the menu.
 *
 * @param price what the guest pays, tax included
 * @param taxPercent tax within that price, in percent of the net price; 0 when none
 * @param qFactorPercent added to the cost for what is not costed line by line, in percent of the cost; 0 when none
 */
public record MenuPrice(BigDecimal price, BigDecimal taxPercent, BigDecimal qFactorPercent) {}
