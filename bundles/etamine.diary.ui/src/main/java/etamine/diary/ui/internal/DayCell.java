package etamine.diary.ui.internal;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One day of the fortnight.
 *
 * @param date the day
 * @param heading its date in words
 * @param covers the covers entered
 * @param note what else is known of it in a few words; empty for nothing
 * @param today whether it is today
 */
record DayCell(LocalDate date, String heading, Optional<Integer> covers, String note, boolean today) {}
