package etamine.catalogue.ui.internal;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * One line of the list of suppliers.
 *
 * @param id the supplier
 * @param name its name
 * @param days the weekdays it delivers on, in words
 * @param next the next delivery that can still be ordered
 * @param orderBy by when
 * @param closing the cut-off in words
 * @param minimum least goods value, in words
 * @param fee delivery fee, in words
 * @param offers how many offers it has
 */
record SupplierRow(
        String id,
        String name,
        String days,
        Optional<LocalDate> next,
        Optional<ZonedDateTime> orderBy,
        String closing,
        String minimum,
        String fee,
        int offers) {

    String nextText() {
        return next.map(LocalDate::toString).orElse("none set");
    }
}
