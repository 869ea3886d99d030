package etamine.costing.internal.words;

import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Percentages and amounts where they leave the arithmetic: rounded once, half up. */
public final class Amounts {
    private static final Ratio HUNDRED = Ratio.of(100);
    private static final int PERCENT_PLACES = 2;
    private static final int AMOUNT_PLACES = 4;

    private Amounts() {}

    /** A part of a whole in percent, two decimals; empty when the whole is nothing. */
    public static Optional<BigDecimal> percent(Ratio part, Ratio whole) {
        return whole.isZero()
                ? Optional.empty()
                : Optional.of(part.times(HUNDRED).dividedBy(whole).toDecimal(PERCENT_PLACES, RoundingMode.HALF_UP));
    }

    public static Optional<BigDecimal> percent(Money part, Money whole) {
        return percent(part.toRatio(), whole.toRatio());
    }

    /** A computed amount in the console's form: four decimals, since it is not a price yet. */
    public static String amount(Money money) {
        return money.amount().setScale(AMOUNT_PLACES, RoundingMode.HALF_UP).toPlainString();
    }

    /** An amount for people, to the currency's smallest coin. */
    public static String text(Money money) {
        return money.rounded() + " " + money.currency().getCurrencyCode();
    }

    /** A reckoned quantity for people, with at most two places. */
    public static String shown(Quantity quantity) {
        BigDecimal amount = quantity.amount().toDecimal(PERCENT_PLACES, RoundingMode.HALF_UP);
        return amount.stripTrailingZeros().toPlainString() + " " + quantity.unit();
    }

    /** A reckoned quantity as a decimal of at most four places. */
    public static String text(Quantity quantity) {
        return CostJson.text(quantity);
    }
}
