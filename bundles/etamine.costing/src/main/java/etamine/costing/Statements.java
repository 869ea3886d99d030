package etamine.costing;

import java.time.LocalDate;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Sets what goods sold should have cost against what they did. Thread-safe, reads only; call it in the background. */
@ProviderType
public interface Statements {

    /** The statement of some days; what it lacks without an inventory, a diary or recipes stands in its notes. */
    Statement of(Days days);

    /** So many weeks of seven days up to and with {@code last}, oldest first; weeks without sales are left out. */
    List<WeekCost> weeks(LocalDate last, int weeks);
}
