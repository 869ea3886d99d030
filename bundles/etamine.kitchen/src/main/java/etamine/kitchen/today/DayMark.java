package etamine.kitchen.today;

import etamine.base.Subject;
import java.time.LocalDate;

/**
 * Something to see on a day of the week ribbon.
 *
 * @param day the day
 * @param kind what it is
 * @param text a few words, such as {@code 52 covers}
 * @param subject what to open
 */
public record DayMark(LocalDate day, Kind kind, String text, Subject subject) {

    /** What a mark is about, in the order they stand on a day. */
    public enum Kind {
        /** Guests expected. */
        COVERS,
        /** A delivery due. */
        DELIVERY,
        /** An order's cut-off. */
        CUT_OFF,
        /** A lot's last day. */
        EXPIRY,
        /** Anything else. */
        NOTE
    }
}
