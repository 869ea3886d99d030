package etamine.kitchen.stock;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.osgi.annotation.versioning.ProviderType;

/** The shelf as the ledger has it. Thread-safe. */
@ProviderType
public interface Stock {

    /** Everything that has ever moved, by item, as it is now. */
    Map<String, StockLevel> levels();

    /** The same as it was at that instant. */
    Map<String, StockLevel> levels(Instant at);

    /** The places in walking order. */
    List<Place> places();
}
