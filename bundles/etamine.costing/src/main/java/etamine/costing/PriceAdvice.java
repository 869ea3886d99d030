package etamine.costing;

import etamine.base.Explanation;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What to charge. Amounts are unrounded, with at most ten places, except the one for the menu.
 *
 * @param question what was asked
 * @param net the price without tax that meets the target
 * @param gross the same with tax
 * @param menu the price for the menu, rounded by the question's rule; with tax when the menu's prices include it
 * @param menuNet what is left of it without tax
 * @param foodCostPercent cost over {@code menuNet}, in percent, two decimals; empty when that is zero
 * @param primeCostPercent cost and labour over {@code menuNet}, two decimals; empty without labour
 * @param contribution {@code menuNet} less cost
 * @param lowerBound whether a price is missing, so that cost and price are at least that
 * @param notes what to look at, such as a cost that is a lower bound, as sentences
 * @param explained how it comes about
 */
public record PriceAdvice(
        PriceQuestion question,
        Money net,
        Money gross,
        Money menu,
        Money menuNet,
        Optional<BigDecimal> foodCostPercent,
        Optional<BigDecimal> primeCostPercent,
        Money contribution,
        boolean lowerBound,
        List<String> notes,
        Explanation explained) {

    /** Copies the list. */
    public PriceAdvice {
        notes = List.copyOf(notes);
    }
}
