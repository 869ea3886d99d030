package etamine.kitchen.use;

import etamine.measures.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.osgi.annotation.versioning.ProviderType;

/** Expects the use of items, from what was written, from covers and mix, or from history. Thread-safe. */
@ProviderType
public interface ExpectedUse {

    /** The use of every day and item with any, both ends included, quantities in the item's count dimension. */
    List<DayUse> between(LocalDate from, LocalDate to);

    /**
     * Expected use of one item on one day.
     *
     * @param date the day
     * @param item the item
     * @param quantity how much, as purchased
     * @param source {@code written}, {@code covers} or {@code history}
     * @param parts the recipes that ask for it and how much each does; empty unless it comes from covers
     */
    record DayUse(LocalDate date, String item, Quantity quantity, String source, Map<String, Quantity> parts) {}
}
