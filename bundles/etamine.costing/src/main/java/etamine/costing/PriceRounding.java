package etamine.costing;

import java.math.BigDecimal;
import java.util.List;

/**
 * How a price becomes one that can stand on the menu. Reckoned exactly before that; digits from the ninth place on are
 * the reckoning's own and do not push a price to the next ending.
 *
 * @param way to which side
 * @param endings what it may end in, each from 0 to less than 1; without any, it goes to the currency's smallest coin
 */
public record PriceRounding(Way way, List<BigDecimal> endings) {

    /** To which side a price goes. */
    public enum Way {
        /** To the next one above, so that the target is always met. */
        UP,
        /** To the nearest one; halfway goes up. */
        NEAREST,
        /** To the next one below. */
        DOWN
    }

    /** Copies the list and refuses endings that are none. */
    public PriceRounding {
        endings = endings.stream().sorted().distinct().toList();
        for (BigDecimal ending : endings) {
            if (ending.signum() < 0 || ending.compareTo(BigDecimal.ONE) >= 0) {
                throw new IllegalArgumentException("A price ends in something from 0 to less than 1, such as 0.50, not "
                        + ending.toPlainString() + ".");
            }
        }
    }

    /** The house's way: up to its next ending; to the nearest smallest coin where it has set no endings. */
    public static PriceRounding of(CostRules rules) {
        return new PriceRounding(rules.endings().isEmpty() ? Way.NEAREST : Way.UP, rules.endings());
    }
}
