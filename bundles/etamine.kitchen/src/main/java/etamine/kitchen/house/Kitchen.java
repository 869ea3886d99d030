package etamine.kitchen.house;

import java.time.Clock;
import java.time.LocalDate;
import org.osgi.annotation.versioning.ProviderType;

/** The house whose book is open, and its clock. Thread-safe. */
@ProviderType
public interface Kitchen {

    /** The settings now. */
    House house();

    /** Changes the settings, undoable. */
    void change(House house);

    /** The clock in the house's zone; tests and demonstrations may set it. */
    Clock clock();

    /** Today in the house. */
    default LocalDate today() {
        return LocalDate.now(clock());
    }
}
