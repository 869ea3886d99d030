package etamine.inventory.internal;

import etamine.measures.Dimension;
import etamine.measures.UnitPrice;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * What tells lots of one item apart, as the ledger's keys have it. The order is the one they are taken in: the first to
 * expire, then the first that came.
 *
 * @param place where it lies
 * @param lot its mark; empty when none
 * @param useBy its last day; empty when not marked
 * @param cost what it cost, as a {@link UnitPrice} writes itself; empty when not known
 * @param since when it came; empty when not known
 * @param dimension what its amount measures
 */
record LotKey(String place, String lot, String useBy, String cost, String since, Dimension dimension)
        implements Comparable<LotKey> {
    private static final Comparator<LotKey> FIRST_EXPIRED = Comparator.comparing((LotKey key) -> key.useBy.isEmpty())
            .thenComparing(LotKey::useBy)
            .thenComparing(LotKey::since)
            .thenComparing(LotKey::lot)
            .thenComparing(LotKey::place)
            .thenComparing(LotKey::cost)
            .thenComparing(LotKey::dimension);

    static LotKey of(Map<String, String> keys) {
        return new LotKey(
                keys.get("place"),
                keys.get("lot"),
                keys.get("use_by"),
                keys.get("unit_cost"),
                keys.get("since"),
                Dimension.valueOf(keys.get("dimension")));
    }

    /** What is not told apart: used without anybody saying from which lot. */
    static LotKey unknown(String place, Dimension dimension) {
        return new LotKey(place, "", "", "", "", dimension);
    }

    /** The ledger's text for a moment, to the second. */
    static String text(Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    LotKey in(String otherPlace) {
        return new LotKey(otherPlace, lot, useBy, cost, since, dimension);
    }

    Optional<LocalDate> lastDay() {
        return useBy.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(useBy));
    }

    Optional<UnitPrice> unitCost() {
        return price(cost);
    }

    static Optional<UnitPrice> price(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String[] sides = text.split(" / ", 2);
        return Optional.of(UnitPrice.of(sides[0], sides[1]));
    }

    @Override
    public int compareTo(LotKey other) {
        return FIRST_EXPIRED.compare(this, other);
    }
}
