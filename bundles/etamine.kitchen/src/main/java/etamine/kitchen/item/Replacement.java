package etamine.kitchen.item;

import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One item in place of another: what was written of the first, so that it means the same of the second. Nothing is
 * rounded but fractions that no file could hold, to nine places.
 *
 * @param from the item that goes
 * @param into the item that stays
 */
public record Replacement(Item from, Item into) {
    private static final int PLACES = 9;
    private static final Pattern STORABLE = Pattern.compile("[0-9]{1,12}(/[0-9]{1,6}|\\.[0-9]{1,9})?");

    /** A quantity of the item as it is. */
    public Quantity quantity(Quantity written) {
        return quantity(written, Optional.empty());
    }

    /**
     * A quantity of a preparation: as written where it comes to the same, else in the unit the second is counted in.
     *
     * @throws IllegalArgumentException with what is missing, when it cannot be said of the second
     */
    public Quantity quantity(Quantity written, Optional<String> as) {
        Converter before = as.map(from::converter).orElseGet(from::converter);
        Converter after = as.map(into::converter).orElseGet(into::converter);
        if (!(before.convert(written, from.countIn()) instanceof Conversion.Converted meant)) {
            return written;
        }
        Conversion now = after.convert(meant.quantity(), into.countIn());
        if (now instanceof Conversion.Missing missing) {
            throw new IllegalArgumentException(written + " of " + from.name() + " cannot be said of " + into.name()
                    + ". " + missing.text() + " Write it on " + into.name() + ", then merge again.");
        }
        Conversion same = after.convert(written, into.countIn());
        return same.equals(now) || same instanceof Conversion.Converted said && equal(said.quantity(), now.orThrow())
                ? written
                : storable(now.orThrow());
    }

    /** A price, so that the same amount of the second costs the same. */
    public UnitPrice price(UnitPrice written) {
        return new UnitPrice(written.amount(), quantity(written.per()));
    }

    /** A pack that holds as much. */
    public Pack pack(Pack written) {
        return new Pack(written.count(), quantity(written.content()));
    }

    private static boolean equal(Quantity one, Quantity other) {
        return one.compareTo(other) == 0;
    }

    private static Quantity storable(Quantity exact) {
        Quantity fine = exact.amount().compareTo(Ratio.ONE) < 0 ? small(exact) : exact;
        if (STORABLE.matcher(fine.amount().toString()).matches()) {
            return fine;
        }
        return new Quantity(Ratio.of(fine.amount().toDecimal(PLACES, RoundingMode.HALF_EVEN)), fine.unit());
    }

    private static Quantity small(Quantity exact) {
        if (exact.unit().equals(Unit.KG)) {
            return exact.in(Unit.G);
        }
        return exact.unit().equals(Unit.L) ? exact.in(Unit.ML) : exact;
    }
}
