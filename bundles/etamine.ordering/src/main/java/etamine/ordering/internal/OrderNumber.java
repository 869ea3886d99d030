package etamine.ordering.internal;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.Locale;
import java.util.Set;

/** Numbers orders so that a person can read them: ISO week of the delivery, supplier, running number. */
final class OrderNumber {
    private OrderNumber() {}

    /** The next free number, such as {@code 2026-W48-dairy-1}; fit to be a file name. */
    static String next(String supplier, LocalDate delivery, Set<String> taken) {
        String week = String.format(
                Locale.ROOT,
                "%d-W%02d-%s-",
                delivery.get(IsoFields.WEEK_BASED_YEAR),
                delivery.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR),
                supplier.replaceAll("[^\\p{L}\\p{N}._-]", "-"));
        int number = 1;
        while (taken.contains(week + number)) {
            number++;
        }
        return week + number;
    }
}
