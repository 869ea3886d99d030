package etamine.costing;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The food cost of one week.
 *
 * @param days the week
 * @param sales without tax, at today's menu prices
 * @param ideal what the portions sold should have cost, at today's prices
 * @param actual the cost of food sold by the shelf; empty without an inventory, and for weeks before its first entry
 */
public record WeekCost(Days days, Money sales, Money ideal, Optional<Money> actual) {

    /** Ideal cost over sales, in percent, two decimals; empty when nothing was sold. */
    public Optional<BigDecimal> idealPercent() {
        return Percent.of(ideal, sales);
    }

    /** Actual cost over sales, in percent, two decimals; empty when it is not known or nothing was sold. */
    public Optional<BigDecimal> actualPercent() {
        return actual.flatMap(cost -> Percent.of(cost, sales));
    }
}
