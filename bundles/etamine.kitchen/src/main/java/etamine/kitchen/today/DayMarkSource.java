package etamine.kitchen.today;

import java.time.LocalDate;
import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** Puts marks on the week ribbon. Asked in the background; thread-safe. */
@ConsumerType
public interface DayMarkSource {

    /** The marks of these days, both ends included. */
    List<DayMark> marks(LocalDate from, LocalDate to);
}
