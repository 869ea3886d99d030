package etamine.ingredients;

import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.time.LocalDate;

/**
 * One weighing before and after: how much of what went in came out.
 *
 * @param date the day
 * @param by who weighed; empty when not said
 * @param kind what was done between the weighings
 * @param in what went in, more than zero
 * @param out what came out usable, more than zero and of the same dimension
 * @param note what was special about it; empty when nothing
 * @param accepted whether the working yield rests on it
 */
public record YieldTest(
        LocalDate date, String by, Kind kind, Quantity in, Quantity out, String note, boolean accepted) {

    /** What was done between the weighings. Yields of different kinds multiply. */
    public enum Kind {
        /** Peeling, boning, cutting: nothing is taken up. */
        TRIM,
        /** Cooking, soaking, thawing: water goes or is taken up. */
        COOKING
    }

    /** What came out over what went in, exact. */
    public Ratio yield() {
        return out.dividedBy(in);
    }

    /** The same test, accepted or not. */
    public YieldTest withAccepted(boolean changed) {
        return new YieldTest(date, by, kind, in, out, note, changed);
    }
}
