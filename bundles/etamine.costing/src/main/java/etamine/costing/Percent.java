package etamine.costing;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Shares of money in percent, rounded half up to two decimals: the one rule for every percentage of costing. */
final class Percent {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int PLACES = 2;

    private Percent() {}

    /** A part over a whole; empty when the whole is zero. */
    static Optional<BigDecimal> of(Money part, Money whole) {
        return whole.isZero()
                ? Optional.empty()
                : Optional.of(part.amount().multiply(HUNDRED).divide(whole.amount(), PLACES, RoundingMode.HALF_UP));
    }
}
