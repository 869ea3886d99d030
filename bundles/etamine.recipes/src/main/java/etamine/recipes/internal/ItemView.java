package etamine.recipes.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The items as one recipe check or explosion sees them.
 *
 * @param lookup finds an item
 * @param complete whether there is an ingredient list, so that an item not found does not exist
 */
public record ItemView(Function<String, Optional<Item>> lookup, boolean complete) {

    /** The items of the open book. */
    public static ItemView of(KnownItems known, MadeItems made) {
        Optional<Items> items = known.items();
        Map<String, Item> own = made.items();
        return new ItemView(
                id -> items.flatMap(all -> all.find(id)).or(() -> Optional.ofNullable(own.get(id))), items.isPresent());
    }

    /** The same items if those were the made ones. */
    public ItemView withMade(Map<String, Item> made, Map<String, Item> listed) {
        return new ItemView(
                id -> {
                    Item own = listed.get(id);
                    Item fresh = made.get(id);
                    if (own != null) {
                        return Optional.of(fresh == null ? own : own.joinedBy(fresh));
                    }
                    return fresh != null ? Optional.of(fresh) : find(id).filter(item -> !item.made());
                },
                complete);
    }

    public Optional<Item> find(String id) {
        return lookup.apply(id);
    }

    public String name(String id) {
        return find(id).map(Item::name).orElse(id);
    }
}
