package etamine.kitchen.covers;

import java.time.LocalDate;

/**
 * Portions of a recipe sold on a day.
 *
 * @param date the day of service
 * @param recipe the recipe
 * @param sold how many portions
 */
public record Sale(LocalDate date, String recipe, long sold) {}
