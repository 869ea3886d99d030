package etamine.measures;

import etamine.base.Exemption;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact rational number: sums, products and quotients never round. Kept in lowest terms with a positive denominator;
 * works in {@code long} and widens by itself when a result needs more.
 */
@Exemption(
        rule = "exported-types",
        because = "a value whose constructor must reduce it, with two inner forms that no record can hide")
public final class Ratio implements Comparable<Ratio> {
    /** Nothing. */
    public static final Ratio ZERO = new Ratio(0, 1, Wide.NONE);

    /** One. */
    public static final Ratio ONE = new Ratio(1, 1, Wide.NONE);

    private static final int LONGEST_SCALE = 1_000;
    private static final int SHORT_SCALE = 12;

    private final long num;
    private final long den;
    private final Wide wide;

    /** The terms when they do not fit a long; {@code NONE} otherwise, so that each value has one representation. */
    private record Wide(BigInteger num, BigInteger den) {
        static final Wide NONE = new Wide(BigInteger.ZERO, BigInteger.ZERO);
    }

    private Ratio(long num, long den, Wide wide) {
        this.num = num;
        this.den = den;
        this.wide = wide;
    }

    /** A whole number. */
    public static Ratio of(long whole) {
        return of(whole, 1);
    }

    /** A fraction in lowest terms; refuses a denominator of zero. */
    public static Ratio of(long numerator, long denominator) {
        if (numerator == Long.MIN_VALUE || denominator == Long.MIN_VALUE) {
            return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
        }
        refuseZero(denominator);
        long divisor = gcd(numerator, denominator);
        return small(
                denominator < 0 ? -numerator / divisor : numerator / divisor,
                denominator < 0 ? -denominator / divisor : denominator / divisor);
    }

    /** A fraction of whole numbers of any size, in lowest terms; refuses a denominator of zero. */
    public static Ratio of(BigInteger numerator, BigInteger denominator) {
        refuseZero(denominator.signum());
        BigInteger divisor = numerator.gcd(denominator);
        BigInteger sign = BigInteger.valueOf(denominator.signum());
        BigInteger top = numerator.divide(divisor).multiply(sign);
        BigInteger bottom = denominator.divide(divisor).multiply(sign);
        if (fits(top) && fits(bottom)) {
            return small(top.longValue(), bottom.longValue());
        }
        return new Ratio(0, 0, new Wide(top, bottom));
    }

    /** Exactly the decimal; refuses exponents beyond a thousand digits. */
    public static Ratio of(BigDecimal decimal) {
        refuseLong(decimal);
        BigInteger unscaled = decimal.unscaledValue();
        return decimal.scale() <= 0
                ? of(unscaled.multiply(BigInteger.TEN.pow(-decimal.scale())), BigInteger.ONE)
                : of(unscaled, BigInteger.TEN.pow(decimal.scale()));
    }

    /** Reads {@code 0.5}, {@code 3/4}, {@code 1 1/2}, {@code ½} or {@code 1½}, with a sign if need be. */
    public static Ratio parse(String text) {
        NumberReader reader = new NumberReader(text);
        Ratio value = reader.signed();
        reader.expectEnd();
        return value;
    }

    /** The sum. */
    public Ratio plus(Ratio other) {
        if (!isSmall() || !other.isSmall()) {
            return widePlus(other);
        }
        long shared = gcd(den, other.den);
        try {
            long left = Math.multiplyExact(num, other.den / shared);
            long right = Math.multiplyExact(other.num, den / shared);
            return of(Math.addExact(left, right), Math.multiplyExact(den / shared, other.den));
        } catch (ArithmeticException overflow) {
            return widePlus(other);
        }
    }

    private Ratio widePlus(Ratio other) {
        BigInteger top =
                numerator().multiply(other.denominator()).add(other.numerator().multiply(denominator()));
        return of(top, denominator().multiply(other.denominator()));
    }

    /** The difference. */
    public Ratio minus(Ratio other) {
        return plus(other.negate());
    }

    /** The product. */
    public Ratio times(Ratio other) {
        if (!isSmall() || !other.isSmall()) {
            return wideTimes(other);
        }
        long first = gcd(num, other.den);
        long second = gcd(other.num, den);
        try {
            return small(
                    Math.multiplyExact(num / first, other.num / second),
                    Math.multiplyExact(den / second, other.den / first));
        } catch (ArithmeticException overflow) {
            return wideTimes(other);
        }
    }

    private Ratio wideTimes(Ratio other) {
        return of(numerator().multiply(other.numerator()), denominator().multiply(other.denominator()));
    }

    /** The quotient; refuses a divisor of zero. */
    public Ratio dividedBy(Ratio other) {
        refuseZero(other.signum());
        return times(other.inverse());
    }

    private Ratio inverse() {
        if (isSmall()) {
            return num < 0 ? small(-den, -num) : small(den, num);
        }
        return of(wide.den, wide.num);
    }

    /** The same size with the other sign. */
    public Ratio negate() {
        return isSmall() ? small(-num, den) : of(wide.num.negate(), wide.den);
    }

    /** The size without its sign. */
    public Ratio abs() {
        return signum() < 0 ? negate() : this;
    }

    /** Minus one, zero or one. */
    public int signum() {
        return isSmall() ? Long.signum(num) : wide.num.signum();
    }

    /** True for nothing. */
    public boolean isZero() {
        return signum() == 0;
    }

    /** True when there is no fraction. */
    public boolean isWhole() {
        return isSmall() ? den == 1 : wide.den.equals(BigInteger.ONE);
    }

    /** The smaller of the two. */
    public Ratio min(Ratio other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** The larger of the two. */
    public Ratio max(Ratio other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The least whole number that is not below this; refuses what does not fit a long. */
    public long ceil() {
        return isSmall() ? -Math.floorDiv(-num, den) : toWhole(RoundingMode.CEILING);
    }

    /** The greatest whole number that is not above this; refuses what does not fit a long. */
    public long floor() {
        return isSmall() ? Math.floorDiv(num, den) : toWhole(RoundingMode.FLOOR);
    }

    /** The part before the fraction, rounded down, of any size. */
    Ratio wholePart() {
        return isSmall()
                ? of(Math.floorDiv(num, den))
                : of(toDecimal(0, RoundingMode.FLOOR).toBigInteger(), BigInteger.ONE);
    }

    /** The nearest whole number by the given rule; refuses what does not fit a long. */
    public long toWhole(RoundingMode rounding) {
        BigInteger whole = toDecimal(0, rounding).toBigInteger();
        if (whole.bitLength() >= Long.SIZE) {
            throw new MeasureException("That amount is too large to keep.");
        }
        return whole.longValue();
    }

    /** The decimal with so many places, rounded once by the given rule. */
    public BigDecimal toDecimal(int scale, RoundingMode rounding) {
        return new BigDecimal(numerator()).divide(new BigDecimal(denominator()), scale, rounding);
    }

    /** The numerator in lowest terms; carries the sign. */
    public BigInteger numerator() {
        return isSmall() ? BigInteger.valueOf(num) : wide.num;
    }

    /** The denominator in lowest terms; more than zero. */
    public BigInteger denominator() {
        return isSmall() ? BigInteger.valueOf(den) : wide.den;
    }

    /** A rounded value for engines that search and draw; never for what is kept or paid. */
    public double doubleValue() {
        if (isSmall() && Math.abs(num) < 1L << 53 && den < 1L << 53) {
            return (double) num / den;
        }
        return new BigDecimal(numerator())
                .divide(new BigDecimal(denominator()), MathContext.DECIMAL128)
                .doubleValue();
    }

    /** Compares sizes; crosswise products of longs are compared at their full 128 bits. */
    @Override
    public int compareTo(Ratio other) {
        if (!isSmall() || !other.isSmall()) {
            return numerator()
                    .multiply(other.denominator())
                    .compareTo(other.numerator().multiply(denominator()));
        }
        int high = Long.compare(Math.multiplyHigh(num, other.den), Math.multiplyHigh(other.num, den));
        return high != 0 ? high : Long.compareUnsigned(num * other.den, other.num * den);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ratio that && num == that.num && den == that.den && wide.equals(that.wide);
    }

    @Override
    public int hashCode() {
        return (Long.hashCode(num) * 31 + Long.hashCode(den)) * 31 + wide.hashCode();
    }

    /** Exact text that {@link #parse} reads back: a decimal when a short one exists, else a fraction such as 1/3. */
    @Override
    public String toString() {
        if (isWhole()) {
            return numerator().toString();
        }
        BigDecimal decimal = toDecimal(SHORT_SCALE, RoundingMode.DOWN);
        return of(decimal).equals(this)
                ? decimal.stripTrailingZeros().toPlainString()
                : numerator() + "/" + denominator();
    }

    private boolean isSmall() {
        return wide == Wide.NONE;
    }

    private static Ratio small(long num, long den) {
        if (num == Long.MIN_VALUE || den == Long.MIN_VALUE) {
            return new Ratio(0, 0, new Wide(BigInteger.valueOf(num), BigInteger.valueOf(den)));
        }
        return new Ratio(num, den, Wide.NONE);
    }

    private static boolean fits(BigInteger value) {
        return value.bitLength() < Long.SIZE && value.longValue() != Long.MIN_VALUE;
    }

    /** Guards what would take long to write out: {@code 1e999999999} is short only as long as nobody adds to it. */
    static void refuseLong(BigDecimal decimal) {
        if (Math.abs((long) decimal.scale()) > LONGEST_SCALE || decimal.precision() > LONGEST_SCALE) {
            throw new MeasureException("That number is too long to be an amount.");
        }
    }

    private static void refuseZero(long denominator) {
        if (denominator == 0) {
            throw new MeasureException("Nothing can be divided by zero; give a number other than 0 below the line.");
        }
    }

    private static long gcd(long left, long right) {
        long a = Math.abs(left);
        long b = Math.abs(right);
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }
}
