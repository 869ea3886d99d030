package etamine.measures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What so much of something costs, in the currency of the kitchen. Prices that differ only in trailing zeros are equal.
 *
 * @param amount what is paid
 * @param per for how much; more than zero
 */
public record UnitPrice(BigDecimal amount, Quantity per) {
    private static final int PLACES = 4;
    private static final int FEWEST_PLACES = 2;

    /** Refuses a price for nothing and a number too long to pay. */
    public UnitPrice {
        Ratio.refuseLong(amount);
        if (per.signum() <= 0) {
            throw new MeasureException("A price must be for more than nothing, such as 1 kg, not " + per + ".");
        }
    }

    /** A price written as two texts, such as {@code 1.20} and {@code 1 kg}. */
    public static UnitPrice of(String amount, String per) {
        return new UnitPrice(Money.decimal(amount), Quantity.parse(per));
    }

    /** What a quantity of the same dimension costs, exact. */
    public Ratio cost(Quantity quantity) {
        return Ratio.of(amount).times(quantity.dividedBy(per));
    }

    /** What one base unit (mg, µl, a thousandth) costs, exact; for words, what one costs. */
    public Ratio perBase() {
        return Ratio.of(amount).dividedBy(per.amount().times(per.unit().inBase()));
    }

    /** The price of one of another unit of the same dimension, rounded half up to four places. */
    public UnitPrice in(Unit unit) {
        Quantity one = Quantity.of(1, unit);
        BigDecimal rounded = cost(one).toDecimal(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return new UnitPrice(rounded.setScale(Math.max(FEWEST_PLACES, rounded.scale())), one);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UnitPrice that && amount.compareTo(that.amount) == 0 && per.equals(that.per);
    }

    @Override
    public int hashCode() {
        return amount.stripTrailingZeros().hashCode() * 31 + per.hashCode();
    }

    /** The price in words, such as {@code 1.20 / 1 kg}. */
    @Override
    public String toString() {
        return amount.toPlainString() + " / " + per;
    }
}
