package etamine.kitchen.covers;

import etamine.measures.Quantity;
import java.time.LocalDate;

/**
 * Use of an item that the cook expects on a day.
 *
 * @param date the day
 * @param item the item
 * @param quantity how much, as purchased
 */
public record WrittenUse(LocalDate date, String item, Quantity quantity) {}
