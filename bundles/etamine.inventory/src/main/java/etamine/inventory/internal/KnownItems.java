package etamine.inventory.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** What is known of items, by whoever knows them; nothing when nobody does. */
@Component(service = KnownItems.class)
public final class KnownItems {
    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Items items;

    Optional<Items> source() {
        return Optional.ofNullable(items);
    }

    Optional<Item> find(String id) {
        return source().flatMap(known -> known.find(id));
    }

    Map<String, Item> all() {
        return source().map(Items::all).orElse(Map.of());
    }

    /** Whether somebody knows items, and not this one. */
    boolean refuses(String id) {
        return source().isPresent() && find(id).isEmpty();
    }

    ItemMeasure measure(String id) {
        return new ItemMeasure(id, find(id));
    }

    String name(String id) {
        return find(id).map(Item::name).orElse(id);
    }
}
