package etamine.costing;

import etamine.base.Explanation;
import etamine.measures.Money;
import etamine.measures.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What the goods sold should have cost against what they did. Amounts are unrounded, with at most ten places.
 *
 * @param days the days
 * @param actual from the shelf; empty without an inventory
 * @param ideal from the sales; empty without sales
 * @param variances of every bought ingredient that was used or should have been, the largest in money first; empty
 *     unless both sides are known
 * @param notes what is missing or doubtful, as sentences
 * @param explained how the figures come about
 */
public record Statement(
        Days days,
        Optional<Actual> actual,
        Optional<Ideal> ideal,
        List<Variance> variances,
        List<String> notes,
        Explanation explained) {

    /** Copies the lists. */
    public Statement {
        variances = List.copyOf(variances);
        notes = List.copyOf(notes);
    }

    /** What it cost more than it should have; empty unless both sides are known. */
    public Optional<Money> variance() {
        return actual.flatMap(
                found -> ideal.map(wanted -> found.costOfFoodSold().minus(wanted.cost())));
    }

    /**
     * What of the variance belongs to no bought ingredient: the value of things made here that the shelf gained or lost,
     * parts of breakdowns that nothing sold used, and the Q factor and packaging of what was sold. With the variances it adds up to the whole exactly.
     */
    public Optional<Money> beside() {
        return variance().map(whole -> variances.stream().map(Variance::money).reduce(whole, Money::minus));
    }

    /**
     * The cost of food sold in the steps of P. R. Dittmer and J. D. Keefe, Principles of Food, Beverage, and Labor Cost
     * Controls, ch. 8. Food and drink are one store here.
     *
     * @param opening what was there at the beginning of the first day, and opening stock entered since
     * @param purchases what came from suppliers less what went back
     * @param closing what was there at the end of the last day
     * @param transfersIn what came from elsewhere in the house, such as the bar's bottles for cooking
     * @param transfersOut what went elsewhere, such as to the bar
     * @param resold what was sold as it is: fat to a renderer, goods to staff
     * @param promotions what was given away
     * @param staffMeals what staff ate
     * @param wasted of the cost of food sold, what was written off; for information
     * @param countedShort of the cost of food sold, what counts found missing, less what they found too much
     */
    public record Actual(
            Money opening,
            Money purchases,
            Money closing,
            Money transfersIn,
            Money transfersOut,
            Money resold,
            Money promotions,
            Money staffMeals,
            Money wasted,
            Money countedShort) {

        /** Step 1: opening and purchases. */
        public Money available() {
            return opening.plus(purchases);
        }

        /** Step 2: less closing. */
        public Money issued() {
            return available().minus(closing);
        }

        /** Step 3: with what came and less what went by other doors. */
        public Money consumed() {
            return issued().plus(transfersIn).minus(transfersOut).minus(resold).minus(promotions);
        }

        /** Step 4: less staff meals. */
        public Money costOfFoodSold() {
            return consumed().minus(staffMeals);
        }
    }

    /**
     * What the portions sold should have cost.
     *
     * @param sold portions
     * @param cost each at today's cost with its Q factor and packaging
     * @param sales without tax, at today's menu prices
     * @param lowerBound whether a price is missing, so that the cost is at least that
     */
    public record Ideal(long sold, Money cost, Money sales, boolean lowerBound) {}

    /** Actual cost over net sales, in percent, two decimals; empty when one of them is not known or sales are zero. */
    public Optional<BigDecimal> foodCostPercent() {
        return actual.flatMap(found -> ideal.flatMap(wanted -> Percent.of(found.costOfFoodSold(), wanted.sales())));
    }

    /** Ideal cost over net sales, in percent, two decimals; empty when there were none. */
    public Optional<BigDecimal> idealPercent() {
        return ideal.flatMap(wanted -> Percent.of(wanted.cost(), wanted.sales()));
    }

    /**
     * One bought ingredient.
     *
     * @param item its id
     * @param name what it is called
     * @param used what left the shelf other than by the doors of the statement, in its count unit
     * @param should what the portions sold should have taken, with what things made here gained or lost of it
     * @param wasted of {@code used}, what was written off
     * @param cost what {@code used} cost
     * @param idealCost what {@code should} costs at today's price; empty when there is none
     * @param byUse of {@link #money}, what comes from using more or less, at today's price
     * @param byPrice of {@link #money}, what comes from having paid other prices than today's
     */
    public record Variance(
            String item,
            String name,
            Quantity used,
            Quantity should,
            Quantity wasted,
            Money cost,
            Optional<Money> idealCost,
            Money byUse,
            Money byPrice) {

        /** More than zero when it cost more than it should have; the two causes add up to it exactly. */
        public Money money() {
            return byUse.plus(byPrice);
        }

        /** How much more was used than should have been. */
        public Quantity over() {
            return used.minus(should);
        }
    }
}
