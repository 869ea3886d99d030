package etamine.costing;

import java.time.LocalDate;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * What things cost before, and why they cost something else now. Reads the history of the book, so call it in the
 * background. Thread-safe.
 */
@ProviderType
public interface CostHistory {

    /**
     * What has changed since the beginning of that day: the book as it stood then against the book now.
     *
     * @see Moved for how a change is taken apart
     */
    Moved since(LocalDate day);

    /** The prices an item was reckoned with, each from the day it held, oldest first; empty when none is known. */
    List<DatedPrice> prices(String item);

    /**
     * What a plate cost at the beginning of each of the last weeks and now, oldest first; weeks before anything in it had
     * a price are left out. Prices, recipes and menu price are those of that day, or the first ones after it.
     */
    List<DatedCost> course(String recipe, int weeks);
}
