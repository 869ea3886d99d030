package etamine.costing.ui.internal;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One recipe in the table.
 *
 * @param id its id
 * @param name its name
 * @param cost the plate's cost where it is on the menu, else one portion's, else the batch's
 * @param each what that cost is for
 * @param net price without tax
 * @param percent food cost in percent of the net price
 * @param contribution net price less cost
 * @param lower whether prices are missing, so that the cost is a lower bound
 */
record CostRow(
        String id,
        String name,
        Money cost,
        String each,
        Optional<Money> net,
        Optional<BigDecimal> percent,
        Optional<Money> contribution,
        boolean lower) {

    boolean onMenu() {
        return net.isPresent();
    }

    String costText() {
        return (lower ? "at least " : "") + cost.rounded();
    }

    String netText() {
        return net.map(Money::rounded).map(Money::toString).orElse("");
    }

    String percentText() {
        return percent.map(value -> value.toPlainString() + " %").orElse("");
    }

    String contributionText() {
        return contribution.map(Money::rounded).map(Money::toString).orElse("");
    }
}
