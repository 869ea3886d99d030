package etamine.kitchen.supply;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/**
 * The latest moment to order for a delivery.
 *
 * @param daysBefore days before the delivery day
 * @param time on that day, in the kitchen's zone
 */
public record CutOff(int daysBefore, LocalTime time) {

    /** The moment for a delivery on {@code day}. */
    public ZonedDateTime before(LocalDate day, ZoneId zone) {
        return ZonedDateTime.of(day.minusDays(daysBefore), time, zone);
    }
}
