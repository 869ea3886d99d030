package etamine.recipes.ui.internal;

import etamine.measures.Ratio;
import java.math.RoundingMode;

/** Shares as people read them. */
final class Percent {
    private Percent() {}

    /** To a tenth of a percent. */
    static String of(Ratio share) {
        return share.times(Ratio.of(100))
                        .toDecimal(1, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString() + " %";
    }
}
