package etamine.recipes;

import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An amount beside what a cook would measure for it. The measured one is for reading; only the exact one is ever kept
 * or reckoned with.
 *
 * @param exact the amount itself
 * @param measured the nearest amount that scales, spoons and hands can measure, of the same dimension
 */
public record Practical(Quantity exact, Quantity measured) {

    /** Whether measuring it so changes nothing. */
    public boolean isExact() {
        return measured.compareTo(exact) == 0;
    }

    /** The measured amount as a cook reads it, in the family of units the exact one is written in. */
    public String text() {
        return switch (measured.unit().system()) {
            case METRIC -> QuantityText.format(measured, MeasureStyle.METRIC);
            case US -> QuantityText.format(measured, MeasureStyle.US);
            default -> QuantityText.formatExact(measured);
        };
    }

    /** How far the measured amount is off, in percent of the exact one with its sign, rounded half up to one place. */
    public BigDecimal errorPercent() {
        if (exact.isZero()) {
            return BigDecimal.ZERO;
        }
        Ratio off = measured.minus(exact).dividedBy(exact);
        return off.times(Ratio.of(100)).toDecimal(1, RoundingMode.HALF_UP);
    }
}
