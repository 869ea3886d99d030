package etamine.recipes.internal.card;

import etamine.measures.Ratio;
import java.math.RoundingMode;

/** A factor as people read it. */
final class ScaledBy {
    private ScaledBy() {}

    /** Such as {@code 2.5 times the recipe}, rounded where it has no short decimal form. */
    static String times(Ratio factor) {
        String shown =
                factor.toDecimal(3, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
        return shown + " times the recipe";
    }
}
