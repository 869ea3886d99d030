package etamine.ordering.internal.plan;

import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.math.RoundingMode;

/**
 * How an item's quantities become whole numbers: base units of its dimension, or thousandths of its own word.
 *
 * @param countIn the unit the item is counted in
 */
public record Grain(Unit countIn) {
    private static final Ratio THOUSAND = Ratio.of(1000);
    private static final int SHOWN_PLACES = 3;

    /** A quantity of the item's dimension as a whole number. */
    public long of(Quantity quantity) {
        return countIn.dimension() == Dimension.WORD
                ? quantity.in(countIn).amount().times(THOUSAND).toWhole(RoundingMode.HALF_EVEN)
                : quantity.toBase();
    }

    /** The whole number as a quantity in the count unit; US and imperial units with three decimals. */
    public Quantity quantity(long grains) {
        Ratio amount = Ratio.of(grains).dividedBy(inGrains());
        boolean exact = countIn.system() != Unit.System.US && countIn.system() != Unit.System.IMPERIAL;
        return new Quantity(exact ? amount : Ratio.of(amount.toDecimal(SHOWN_PLACES, RoundingMode.HALF_UP)), countIn);
    }

    private Ratio inGrains() {
        return countIn.dimension() == Dimension.WORD ? THOUSAND : countIn.inBase();
    }
}
