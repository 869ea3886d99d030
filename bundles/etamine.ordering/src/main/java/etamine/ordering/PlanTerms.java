package etamine.ordering;

import java.time.LocalDate;

/**
 * What a plan is asked for.
 *
 * @param from the first day; the shelf counts as it is now. A day before today is planned as if its morning were now
 * @param days how many days, from 1 to 60
 */
public record PlanTerms(LocalDate from, int days) {
    /** A week. */
    public static final int USUAL_DAYS = 7;

    private static final int MOST_DAYS = 60;

    /** Refuses spans that cannot be planned. */
    public PlanTerms {
        if (days < 1 || days > MOST_DAYS) {
            throw new IllegalArgumentException("A plan is made for 1 to " + MOST_DAYS + " days, not for " + days + ".");
        }
    }
}
