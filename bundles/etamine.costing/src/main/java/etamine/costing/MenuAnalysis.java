package etamine.costing;

import java.util.Optional;
import java.util.Set;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Menu analysis after M. L. Kasavana and D. I. Smith, Menu Engineering (1982). Popularity is high when an item's share of
 * the portions sold is above 70 % of an equal share; margin is high when its contribution is above the average portion's.
 * Thread-safe, reads only.
 */
@ProviderType
public interface MenuAnalysis {

    /**
     * The menu in some days: everything on it now, sold or not, and what was sold.
     *
     * @param days which sales; empty for all there are
     * @param how which items are compared with one another
     * @param only compare only these recipes; empty for all
     * @throws IllegalArgumentException if {@code only} names a recipe there is not; the message says what to do
     */
    MenuReport report(Optional<Days> days, Comparison how, Set<String> only);

    /** The first and the last day with sales; empty without sales or without a diary. */
    Optional<Days> sold();

    /** Which items are compared with one another. */
    enum Comparison {
        /** Plates with plates, drinks with drinks: a glass is not a poor plate. */
        WITHIN_KIND,
        /** All together. */
        TOGETHER
    }
}
