package etamine.kitchen.supply;

import java.time.LocalDate;
import java.time.ZonedDateTime;

/**
 * A delivery that can still be ordered.
 *
 * @param supplier the supplier
 * @param day the day it comes
 * @param orderBy the cut-off
 */
public record Delivery(String supplier, LocalDate day, ZonedDateTime orderBy) {}
