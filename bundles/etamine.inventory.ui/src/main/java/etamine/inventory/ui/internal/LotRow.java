package etamine.inventory.ui.internal;

import java.time.LocalDate;

/**
 * One lot as text.
 *
 * @param key what tells it apart
 * @param place where it lies
 * @param mark the mark on it
 * @param quantity how much
 * @param useBy its marked day
 * @param day the same as a day; the latest of all when it has none
 * @param cost what it cost
 * @param due whether its day is today or past
 */
record LotRow(
        String key,
        String place,
        String mark,
        String quantity,
        String useBy,
        LocalDate day,
        String cost,
        boolean due) {}
