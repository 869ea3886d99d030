package etamine.costing.internal.engine;

import etamine.kitchen.item.Item;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;

/** The border between exact values and the engine's numbers. */
public final class Reckoning {
    private static final int PLACES = 10;
    private static final double TEN_PLACES = 1e10;
    /** Below this the tenth place is within what a double holds, so that no text has to be made of it. */
    private static final double EASY = 1e5;

    private Reckoning() {}

    /** The unit an item is reckoned in: g, ml, ea, portion, or the own word it is counted in. */
    static Unit unit(Item item) {
        return item.dimension() == Dimension.WORD ? item.countIn() : Unit.basic(item.dimension());
    }

    /** The quantity in the item's reckoning unit. */
    public static Conversion convert(Item item, Quantity quantity) {
        Unit unit = unit(item);
        // Most need no equivalence, and this is asked for every price of the book.
        return quantity.unit().isLike(unit)
                ? new Conversion.Converted(quantity.in(unit), List.of())
                : item.converter().convert(quantity, unit);
    }

    /** How many reckoning units a quantity of that dimension is. */
    public static double units(Quantity quantity) {
        Unit unit = quantity.unit();
        return unit.dimension() == Dimension.WORD
                ? quantity.amount().doubleValue()
                : quantity.in(Unit.basic(unit.dimension())).amount().doubleValue();
    }

    /** An engine number as a decimal of ten places, which is what every result is rounded to once. */
    static BigDecimal decimal(double value) {
        if (Math.abs(value) < EASY) {
            return BigDecimal.valueOf(Math.round(value * TEN_PLACES), PLACES);
        }
        return BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_EVEN);
    }

    public static Money money(double value, Currency currency) {
        return new Money(decimal(value), currency);
    }

    /** A cost per reckoning unit as a price per kg, l, piece, portion or own word. */
    public static UnitPrice price(Item item, double perUnit) {
        return switch (item.dimension()) {
            case MASS -> new UnitPrice(decimal(perUnit * 1000), Quantity.of(1, Unit.KG));
            case VOLUME -> new UnitPrice(decimal(perUnit * 1000), Quantity.of(1, Unit.L));
            default -> new UnitPrice(decimal(perUnit), Quantity.of(1, unit(item)));
        };
    }
}
