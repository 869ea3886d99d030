package etamine.measures;

import etamine.base.Exemption;
import java.util.Collection;
import java.util.List;

/** Quantities as people write and read them. Reading is exact; only {@link #format} rounds, and never what is kept. */
@Exemption(
        rule = "exported-types",
        because = "there is one notation of quantities, so there is nothing to put another in place of")
public final class QuantityText {
    private static final int LONGEST_ENTRY = 120;

    private QuantityText() {}

    /**
     * Reads what people type: {@code 1 1/2 cup}, {@code 2 lb 4 oz}, {@code 6 x 1 l} (as its total), {@code ½ tsp},
     * {@code 1,5 kg}, {@code 250g}, {@code 12 pieces}. Refuses amounts below zero. An unknown word becomes a unit of an
     * ingredient's own.
     */
    public static Quantity parse(String text) {
        return parse(text, List.of());
    }

    /** The same, where the words an ingredient has are recognised in their plural too: {@code 2 bunches}. */
    public static Quantity parse(String text, Collection<Unit> ownWords) {
        if (text.length() > LONGEST_ENTRY) {
            throw new MeasureException("That is too long to be an amount; write a number and a unit, such as 250 g.");
        }
        Quantity quantity = new QuantityReader(text, word -> OwnWords.match(word, ownWords)).quantity();
        if (quantity.signum() < 0) {
            throw new MeasureException("An amount cannot be less than zero; leave out the minus sign.");
        }
        return quantity;
    }

    /**
     * The amount as it is read in a kitchen, in the units of a style and rounded to what can be measured. Never shows
     * something as nothing. Pieces, portions and own words keep their unit.
     */
    public static String format(Quantity quantity, MeasureStyle style) {
        String size = KitchenText.of(quantity.signum() < 0 ? quantity.negate() : quantity, style);
        return quantity.signum() < 0 ? "-" + size : size;
    }

    /** The amount as it is kept, without rounding; {@link Quantity#parse} reads an equal value from it. */
    public static String formatExact(Quantity quantity) {
        String size = KitchenText.exact(quantity.amount().abs(), quantity.unit());
        return quantity.signum() < 0 ? "-" + size : size;
    }
}
