package etamine.measures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * An exact amount with its unit. Equal only when amount and unit are equal ({@code 1 kg} is not {@code 1000 g}); the
 * order compares what is measured.
 *
 * @param amount how many units, exact; may be negative
 * @param unit of what size
 */
public record Quantity(Ratio amount, Unit unit) implements Comparable<Quantity> {
    private static final int LONGEST_PLAIN = 15;

    /** So many whole units. */
    public static Quantity of(long amount, Unit unit) {
        return new Quantity(Ratio.of(amount), unit);
    }

    /** An amount in any form {@link Ratio#parse} reads. */
    public static Quantity of(String amount, Unit unit) {
        return new Quantity(Ratio.parse(amount), unit);
    }

    /** Nothing, in a unit. */
    public static Quantity zero(Unit unit) {
        return new Quantity(Ratio.ZERO, unit);
    }

    /**
     * Reads the exchange form, such as {@code 1.5 l} or {@code -1/3 cup}. A word that is no unit becomes a unit of an
     * ingredient's own; a pack ({@code 6 x 1 l}) counts as its total.
     */
    public static Quantity parse(String text) {
        return plain(text).orElseGet(() -> new QuantityReader(text).quantity());
    }

    /** Reads a whole or decimal amount with a known unit at once: a book holds a hundred thousand of them. */
    private static Optional<Quantity> plain(String text) {
        int space = text.indexOf(' ');
        if (space <= 0 || space > LONGEST_PLAIN || !isPlain(text, space)) {
            return Optional.empty();
        }
        Optional<Unit> unit = Unit.find(text.substring(space + 1));
        if (unit.isEmpty()) {
            return Optional.empty();
        }
        String number = text.substring(0, space);
        Ratio amount = number.indexOf('.') < 0 ? Ratio.of(Long.parseLong(number)) : Ratio.of(new BigDecimal(number));
        return Optional.of(new Quantity(amount, unit.get()));
    }

    private static boolean isPlain(String text, int end) {
        int points = 0;
        for (int i = 0; i < end; i++) {
            char character = text.charAt(i);
            points += character == '.' ? 1 : 0;
            boolean inside = i > 0 && i < end - 1;
            if ((character < '0' || character > '9') && !(character == '.' && inside && points == 1)) {
                return false;
            }
        }
        return true;
    }

    /** So many base units of a dimension, given in g, ml, ea or portion. */
    public static Quantity fromBase(Dimension dimension, long base) {
        Unit unit = Unit.basic(dimension);
        return new Quantity(Ratio.of(base).dividedBy(unit.inBase()), unit);
    }

    /** Base units (mg, µl, thousandths), rounded half to even; refuses words and what does not fit a long. */
    public long toBase() {
        if (unit.dimension() == Dimension.WORD) {
            throw new MeasureException(
                    "“" + unit + "” has no size of its own; convert it to a weight, volume or count.");
        }
        try {
            return inBase().toWhole(RoundingMode.HALF_EVEN);
        } catch (MeasureException tooLarge) {
            throw new MeasureException("An amount this large cannot be kept; check the number before “" + unit + "”.");
        }
    }

    private Ratio inBase() {
        return amount.times(unit.inBase());
    }

    /** Multiplied by a number. */
    public Quantity times(Ratio factor) {
        return new Quantity(amount.times(factor), unit);
    }

    /** How many times the other goes into this; both of one dimension. */
    public Ratio dividedBy(Quantity other) {
        refuseUnlike(other.unit, "divided by");
        return inBase().dividedBy(other.inBase());
    }

    /** The sum in this unit; both of one dimension. */
    public Quantity plus(Quantity other) {
        return new Quantity(amount.plus(other.in(unit).amount), unit);
    }

    /** The difference in this unit; both of one dimension. */
    public Quantity minus(Quantity other) {
        return plus(other.negate());
    }

    /** The same size with the other sign. */
    public Quantity negate() {
        return new Quantity(amount.negate(), unit);
    }

    /** Exactly the same amount in another unit of the same dimension. */
    public Quantity in(Unit other) {
        if (unit.equals(other)) {
            return this;
        }
        refuseUnlike(other, "given in");
        return new Quantity(inBase().dividedBy(other.inBase()), other);
    }

    /** Exactly the same amount in the unit that its trade code names: a cup becomes millilitres, most stay as is. */
    public Quantity forTrade() {
        return Unit.byRec20(unit.rec20()).map(this::in).orElse(this);
    }

    /** True for an amount of nothing. */
    public boolean isZero() {
        return amount.isZero();
    }

    /** Minus one, zero or one. */
    public int signum() {
        return amount.signum();
    }

    /** Compares what is measured; refuses quantities of different dimensions. */
    @Override
    public int compareTo(Quantity other) {
        refuseUnlike(other.unit, "compared with");
        return unit.equals(other.unit) ? amount.compareTo(other.amount) : inBase().compareTo(other.inBase());
    }

    /** The exchange form, exact: {@link #parse} reads an equal value from it. */
    @Override
    public String toString() {
        return amount + " " + unit.symbol();
    }

    private void refuseUnlike(Unit other, String what) {
        if (!unit.isLike(other)) {
            throw new MeasureException("An amount in " + unit + " cannot be " + what + " " + other
                    + " without a measure that links the two.");
        }
    }
}
