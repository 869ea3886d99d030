package etamine.costing;

import java.math.BigDecimal;

/** What a price should come to. All of them speak of the price without tax. */
public sealed interface PriceTarget {
    /** All of a price, in percent. */
    BigDecimal WHOLE = BigDecimal.valueOf(100);

    /**
     * The cost is to be so many percent of the price: price = cost / percent.
     *
     * @param percent more than 0, at most 100
     */
    record FoodCost(BigDecimal percent) implements PriceTarget {
        /** Refuses what is no share of a price. */
        public FoodCost {
            refuseUnlessShare(percent, "food cost");
        }
    }

    /**
     * So much is to be left of the price after the cost: price = cost + amount.
     *
     * @param amount in the house's currency; less than zero sells below cost
     */
    record Contribution(BigDecimal amount) implements PriceTarget {}

    /**
     * The price is to be a multiple of the cost: price = cost x factor.
     *
     * @param factor more than 0; less than 1 sells below cost
     */
    record Factor(BigDecimal factor) implements PriceTarget {
        /** Refuses a factor that gives no price. */
        public Factor {
            if (factor.signum() <= 0) {
                throw new IllegalArgumentException(
                        "Write a factor of more than 0, such as 3.5, instead of " + factor.toPlainString() + ".");
            }
        }
    }

    /**
     * Cost and hands-on work together are to be so many percent of the price: price = (cost + labour) / percent.
     *
     * @param percent more than 0, at most 100
     */
    record PrimeCost(BigDecimal percent) implements PriceTarget {
        /** Refuses what is no share of a price. */
        public PrimeCost {
            refuseUnlessShare(percent, "prime cost");
        }
    }

    private static void refuseUnlessShare(BigDecimal percent, String what) {
        if (percent.signum() <= 0 || percent.compareTo(WHOLE) > 0) {
            throw new IllegalArgumentException("Write a " + what + " of more than 0 and at most 100 percent, not "
                    + percent.toPlainString() + ".");
        }
    }
}
