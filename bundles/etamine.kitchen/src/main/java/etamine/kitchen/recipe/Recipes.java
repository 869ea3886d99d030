package etamine.kitchen.recipe;

import etamine.measures.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The recipes and their graph. Thread-safe; collections are immutable snapshots. */
@ProviderType
public interface Recipes {

    /** All recipes by id, in the order of ids. */
    Map<String, Recipe> all();

    /** The recipe of that id. */
    Optional<Recipe> find(String id);

    /**
     * The recipes as they stood at that instant, each after those that make what it uses; one written later stands as it
     * was first written. Reads the book, so call it in the background; what has no memory gives the recipes now.
     */
    default List<Recipe> inOrderAsOf(Instant at) {
        return inOrder();
    }

    /** When a recipe was first written; empty where that is not known. Reads the book. */
    default Optional<Instant> firstWritten(String id) {
        return Optional.empty();
    }

    /** Every recipe, each after those that make what it uses. */
    List<Recipe> inOrder();

    /** The recipe that makes an item: the one of the item's own id, else the first by id. */
    Optional<Recipe> maker(String item);

    /** The recipes that use an item, by id. */
    List<Recipe> usersOf(String item);

    /**
     * What has to be bought and made so that all of {@code wanted} is there. Things that one batch makes together are
     * counted once: the batch that the neediest of them asks for.
     *
     * @param wanted items and how much of each
     * @param available made items already on hand, used first
     */
    Requirement require(Map<String, Quantity> wanted, Map<String, Quantity> available);
}
