package etamine.costing;

import etamine.base.Explanation;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The menu by popularity and contribution. Costs and prices are those of today; prices are without tax.
 *
 * @param days the days of the sales; empty when nothing was sold
 * @param groups items that are compared with one another; never empty groups
 * @param leftOut what was sold but cannot be compared
 * @param notes what to know when reading it, as sentences
 */
public record MenuReport(Optional<Days> days, List<Group> groups, List<LeftOut> leftOut, List<String> notes) {
    /** What an average hides, in a sentence that belongs beside every report. */
    public static final String CAUTION = "An average hides its parts: a plate with the worse food-cost percentage can"
            + " leave more money per cover, and a menu can improve its percentage while it earns less. Look at the"
            + " contribution in money, item by item, before a price or a plate is changed.";

    /** Copies the lists. */
    public MenuReport {
        groups = List.copyOf(groups);
        leftOut = List.copyOf(leftOut);
        notes = List.copyOf(notes);
    }

    /**
     * Items compared with one another.
     *
     * @param name {@code plates}, {@code drinks}, {@code components}, or {@code all} when everything is compared together
     * @param items by contribution in total, the largest first
     * @param sold portions in all
     * @param averageContribution total contribution over portions sold, unrounded; the line between low and high margin
     * @param popularityCutPercent 70 % over the number of items, in percent, two decimals; the line between low and high
     *     popularity
     * @param totalCost cost of everything sold
     * @param totalRevenue net sales
     * @param foodCostPercent total cost over net sales, two decimals: the food cost weighted by the mix; empty when there
     *     were no net sales
     * @param explained how the lines come about
     */
    public record Group(
            String name,
            List<Item> items,
            long sold,
            Money averageContribution,
            BigDecimal popularityCutPercent,
            Money totalCost,
            Money totalRevenue,
            Optional<BigDecimal> foodCostPercent,
            Explanation explained) {

        /** Copies the list. */
        public Group {
            items = List.copyOf(items);
        }

        /** Net sales less cost. */
        public Money totalContribution() {
            return totalRevenue.minus(totalCost);
        }
    }

    /**
     * One item.
     *
     * @param recipe its id
     * @param name what it is called
     * @param sold portions sold
     * @param sharePercent its share of the group's portions, two decimals
     * @param cost of one portion, unrounded
     * @param price of one portion without tax, unrounded
     * @param totalCost cost of what was sold
     * @param totalRevenue net sales
     * @param highMargin whether its contribution is above the group's average; a tie is low
     * @param popular whether its share is above the group's cut; a tie is low
     * @param foodCostPercent cost over price, two decimals; empty at a price of zero
     * @param lowerBound whether a price below it is missing, so that its contribution is at most that
     */
    public record Item(
            String recipe,
            String name,
            long sold,
            BigDecimal sharePercent,
            Money cost,
            Money price,
            Money totalCost,
            Money totalRevenue,
            boolean highMargin,
            boolean popular,
            Optional<BigDecimal> foodCostPercent,
            boolean lowerBound) {

        /** What one portion leaves. */
        public Money contribution() {
            return price.minus(cost);
        }

        /** What all portions leave. */
        public Money totalContribution() {
            return totalRevenue.minus(totalCost);
        }

        /** How it stands. */
        public MenuClass standing() {
            return MenuClass.of(highMargin, popular);
        }
    }

    /**
     * Something sold that is not among the items.
     *
     * @param recipe its id
     * @param sold portions sold
     * @param why a sentence that says what to do
     */
    public record LeftOut(String recipe, long sold, String why) {}
}
