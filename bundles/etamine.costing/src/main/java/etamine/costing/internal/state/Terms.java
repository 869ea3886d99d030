package etamine.costing.internal.state;

import etamine.costing.CostRules;
import java.time.LocalDate;
import java.util.Currency;

/**
 * What every figure of one reckoning is told in.
 *
 * @param currency the house's
 * @param rules the kitchen's
 * @param today the day prices are as old as seen from
 */
public record Terms(Currency currency, CostRules rules, LocalDate today) {}
