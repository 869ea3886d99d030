package etamine.measures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Grams and kilograms, millilitres and litres, to about three figures. */
final class MetricText {
    private static final int MOST_PLACES = 12;
    private static final Ratio THOUSAND = Ratio.of(1_000);

    private MetricText() {}

    /** In the small unit below a thousand of it, else in the large one. */
    static String of(Quantity quantity, Unit small, Unit large) {
        Ratio amount = quantity.in(small).amount();
        int places = Math.max(0, places(amount, 2));
        if (Ratio.of(amount.toDecimal(places, RoundingMode.HALF_UP)).compareTo(THOUSAND) < 0) {
            return plain(amount, places) + " " + small;
        }
        Ratio more = quantity.in(large).amount();
        return plain(more, Math.max(0, places(more, 3))) + " " + large;
    }

    /** The places that show so many figures of an amount. */
    static int places(Ratio amount, int figures) {
        int places = figures - 1;
        for (Ratio limit = Ratio.of(10); amount.compareTo(limit) >= 0 && places > 0; places--) {
            limit = limit.times(Ratio.of(10));
        }
        for (Ratio limit = Ratio.ONE; amount.compareTo(limit) < 0 && places < MOST_PLACES; places++) {
            limit = limit.dividedBy(Ratio.of(10));
        }
        return places;
    }

    /** The decimal with at most so many places, without idle zeros. */
    static String plain(Ratio amount, int places) {
        BigDecimal rounded = amount.toDecimal(places, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.toPlainString();
    }
}
