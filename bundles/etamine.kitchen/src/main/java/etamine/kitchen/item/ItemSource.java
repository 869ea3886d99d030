package etamine.kitchen.item;

import java.time.Instant;
import java.util.Map;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * Contributes items that are not on the ingredient list, such as those that recipes make. An ingredient of the same id
 * keeps its own facts and gains the contributed measures after its own.
 */
@ConsumerType
public interface ItemSource {

    /** The items now, by id; called often, so it must be cheap. */
    Map<String, Item> items();

    /** The items as they stood at that instant; what has no memory gives the items now. */
    default Map<String, Item> asOf(Instant at) {
        return items();
    }
}
