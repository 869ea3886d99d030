package etamine.kitchen.exchange;

import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * What the file and the book together declare, by type and id, so that sections can check one another without knowing
 * each other. The file's facts replace the book's. Kinds in use: {@link etamine.kitchen.item.Item},
 * {@link etamine.kitchen.recipe.Recipe}, {@link etamine.kitchen.supply.Supplier},
 * {@link etamine.kitchen.supply.Offer} (id {@code supplier/code}), {@link etamine.kitchen.stock.Place},
 * {@link etamine.kitchen.house.House} (id empty). Not thread-safe.
 */
@ProviderType
public interface Facts {

    /** Declares something. */
    <T> void put(Class<T> kind, String id, T fact);

    /** What was declared. */
    <T> Optional<T> find(Class<T> kind, String id);

    /** Everything declared of a kind, by id. */
    <T> Map<String, T> all(Class<T> kind);

    /** Whether any installed module declares this kind; references to a kind that nobody declares are not checked. */
    boolean covers(Class<?> kind);
}
