package etamine.kitchen.cost;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A recipe on the menu.
 *
 * @param cost cost of one portion with the Q factor, unrounded
 * @param net menu price without tax, unrounded
 * @param foodCostPercent cost over net price, in percent, two decimals; empty when the net price is zero
 * @param contribution net price less cost, unrounded
 */
public record PlateCost(Money cost, Money net, Optional<BigDecimal> foodCostPercent, Money contribution) {}
