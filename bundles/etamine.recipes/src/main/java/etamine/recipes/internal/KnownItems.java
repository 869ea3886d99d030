package etamine.recipes.internal;

import etamine.kitchen.item.Items;
import java.util.Optional;

/** The items the kitchen knows, when there is an ingredient list. */
@FunctionalInterface
public interface KnownItems {

    /** The items; empty when no module offers them. */
    Optional<Items> items();
}
