package etamine.kitchen.stock;

import java.time.Instant;
import java.util.Map;
import org.osgi.annotation.versioning.ProviderType;

/** What came and went, summed by the ledger. Thread-safe; cheap for its size, but reads the book. */
@ProviderType
public interface StockFlows {

    /**
     * Every item that was there or moved in some time, by id.
     *
     * @param from the beginning, included
     * @param until the end, excluded
     */
    Map<String, StockFlow> between(Instant from, Instant until);
}
