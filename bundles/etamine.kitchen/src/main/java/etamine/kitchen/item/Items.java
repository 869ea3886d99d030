package etamine.kitchen.item;

import etamine.base.MapChanges;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.osgi.annotation.versioning.ProviderType;

/** Every item the kitchen knows: the ingredient list and what other modules contribute. Thread-safe. */
@ProviderType
public interface Items {

    /** The item of that id. */
    Optional<Item> find(String id);

    /** All items by id, in the order of ids; an immutable snapshot. */
    Map<String, Item> all();

    /**
     * The ingredient list alone, without what item sources contribute; safe to call from an {@link ItemSource}. What
     * cannot tell the two apart gives all.
     */
    default Map<String, Item> listed() {
        return all();
    }

    /**
     * All items as they stood at that instant, by id; one written later stands as it was first written. Reads the book,
     * so call it in the background; what has no memory gives the items now.
     */
    default Map<String, Item> asOf(Instant at) {
        return all();
    }

    /** The ingredient list alone as {@link #asOf} gives it; safe to call from an {@link ItemSource}. */
    default Map<String, Item> listedAsOf(Instant at) {
        return listed();
    }

    /**
     * The ids of all items that came, went or are not the same object any more between two snapshots of {@link #all}. Who
     * keeps the snapshots may know without comparing.
     */
    default Set<String> changes(Map<String, Item> before, Map<String, Item> after) {
        return MapChanges.between(before, after);
    }

    /** The item's name, or the id where the item is unknown. */
    default String name(String id) {
        return find(id).map(Item::name).orElse(id);
    }
}
