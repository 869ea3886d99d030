package etamine.costing;

import java.time.LocalDate;

/**
 * A run of days.
 *
 * @param from the first day
 * @param to the last day, included
 */
public record Days(LocalDate from, LocalDate to) {

    /** Refuses days that end before they begin. */
    public Days {
        if (from.isAfter(to)) {
            throw new IllegalArgumentException(
                    "The first day, " + from + ", is after the last, " + to + "; exchange the two.");
        }
    }

    @Override
    public String toString() {
        return from.equals(to) ? from.toString() : from + " to " + to;
    }
}
