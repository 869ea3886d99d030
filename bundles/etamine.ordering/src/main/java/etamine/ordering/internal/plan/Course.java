package etamine.ordering.internal.plan;

import java.util.List;

/**
 * What becomes of an item day by day.
 *
 * @param opening what is there when service starts, after the day's deliveries
 * @param closing what is there when the day is over
 * @param unmet how much of the day's use is missing
 * @param waste what passes its last day unused
 */
public record Course(long[] opening, long[] closing, long[] unmet, List<Waste> waste) {

    /**
     * What is left of a batch after its last day.
     *
     * @param batch the batch
     * @param day the day it is thrown away; its last, or the first day for what was past it already
     * @param grains how much
     */
    public record Waste(Batch batch, int day, long grains) {}

    /** Copies the list. */
    public Course {
        waste = List.copyOf(waste);
    }

    /** The first day before {@code end} on which use is missing; -1 when there is none. */
    public int firstUnmet(int end) {
        for (int day = 0; day < Math.min(end, unmet.length); day++) {
            if (unmet[day] > 0) {
                return day;
            }
        }
        return -1;
    }

    /** How much use is missing before {@code end}. */
    public long unmetBefore(int end) {
        long sum = 0;
        for (int day = 0; day < Math.min(end, unmet.length); day++) {
            sum = Math.addExact(sum, unmet[day]);
        }
        return sum;
    }
}
