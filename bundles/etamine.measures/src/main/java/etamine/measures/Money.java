package etamine.measures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * An amount of one currency. Sums are exact; a product that has no short decimal keeps ten places, and only
 * {@link #rounded()} cuts to what can be paid.
 *
 * @param amount with at least the places of the currency's minor unit
 * @param currency what it is paid in
 */
public record Money(BigDecimal amount, Currency currency) implements Comparable<Money> {
    private static final int WORKING_PLACES = 10;
    private static final int LONGEST_TEXT = 40;

    /** Brings equal amounts to one form, so that 1.2 and 1.20 are equal. */
    public Money {
        Ratio.refuseLong(amount);
        BigDecimal shortest = amount.stripTrailingZeros();
        amount = shortest.setScale(Math.max(shortest.scale(), places(currency)), RoundingMode.UNNECESSARY);
    }

    /** Exactly this amount. */
    public static Money of(BigDecimal amount, Currency currency) {
        return new Money(amount, currency);
    }

    /** Exactly the decimal in the text. */
    public static Money of(String amount, Currency currency) {
        return parse(amount, currency);
    }

    /** The amount with at most ten places, rounded half up. */
    public static Money of(Ratio amount, Currency currency) {
        return new Money(amount.toDecimal(WORKING_PLACES, RoundingMode.HALF_UP), currency);
    }

    /** Nothing. */
    public static Money zero(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /** Reads a plain decimal such as {@code 12.50}; refuses exponents, signs of currency and marks for thousands. */
    public static Money parse(String text, Currency currency) {
        return new Money(decimal(text), currency);
    }

    static BigDecimal decimal(String text) {
        String plain = text.strip();
        if (plain.length() > LONGEST_TEXT || !plain.matches("-?[0-9]+(\\.[0-9]+)?")) {
            throw new MeasureException("“" + NumberReader.excerpt(plain)
                    + "” is not an amount of money; write digits and a point, such as 12.50.");
        }
        return new BigDecimal(plain);
    }

    /** The sum; refuses another currency. */
    public Money plus(Money other) {
        refuseOtherCurrency(other);
        return new Money(amount.add(other.amount), currency);
    }

    /** The difference; refuses another currency. */
    public Money minus(Money other) {
        return plus(other.negate());
    }

    /** The same size with the other sign. */
    public Money negate() {
        return new Money(amount.negate(), currency);
    }

    /** The product, exact when it has ten places or fewer, else rounded half up to ten. */
    public Money times(Ratio factor) {
        return of(toRatio().times(factor), currency);
    }

    /** The amount as an exact number. */
    public Ratio toRatio() {
        return Ratio.of(amount);
    }

    /** What can be paid: rounded half up (away from zero) to the minor unit, which has 0, 2 or 3 places. */
    public Money rounded() {
        return new Money(amount.setScale(places(currency), RoundingMode.HALF_UP), currency);
    }

    /** Minus one, zero or one. */
    public int signum() {
        return amount.signum();
    }

    /** True for an amount of nothing. */
    public boolean isZero() {
        return amount.signum() == 0;
    }

    /** Compares amounts; refuses another currency. */
    @Override
    public int compareTo(Money other) {
        refuseOtherCurrency(other);
        return amount.compareTo(other.amount);
    }

    /** The amount as a plain decimal without the currency. */
    @Override
    public String toString() {
        return amount.toPlainString();
    }

    private void refuseOtherCurrency(Money other) {
        if (!currency.equals(other.currency)) {
            throw new MeasureException("Amounts in " + currency + " and " + other.currency
                    + " cannot be put together; convert one first.");
        }
    }

    private static int places(Currency currency) {
        return Math.max(0, currency.getDefaultFractionDigits());
    }
}
