package etamine.ingredients.internal;

import etamine.base.MapChanges;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemSource;
import etamine.kitchen.item.Items;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** The ingredient list and what every item source contributes, put together anew only when one of them has changed. */
@Component
public final class MergedItems implements Items {
    private final IngredientShelf shelf;
    private final List<ItemSource> sources = new CopyOnWriteArrayList<>();
    private volatile Merge merge = Merge.NOTHING;

    /** Snapshots as they were put together, and what changed from the one before. */
    private record Merge(
            List<Map<String, Item>> parts,
            SortedMap<String, Item> items,
            Map<String, Item> before,
            Set<String> changed) {
        static final Merge NOTHING = new Merge(List.of(), new TreeMap<>(), Map.of(), Set.of());

        boolean madeOf(List<Map<String, Item>> now) {
            boolean same = parts.size() == now.size();
            for (int i = 0; same && i < now.size(); i++) {
                same = parts.get(i) == now.get(i);
            }
            return same;
        }
    }

    /** Items on top of that shelf. */
    @Activate
    public MergedItems(@Reference IngredientShelf shelf) {
        this.shelf = shelf;
    }

    /** Takes a source in. */
    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    public void addSource(ItemSource source) {
        sources.add(source);
    }

    /** Leaves a source out again. */
    public void removeSource(ItemSource source) {
        sources.remove(source);
    }

    @Override
    public Optional<Item> find(String id) {
        return Optional.ofNullable(all().get(id));
    }

    @Override
    public Map<String, Item> listed() {
        return shelf.items();
    }

    @Override
    public Map<String, Item> all() {
        List<Map<String, Item>> parts = new ArrayList<>();
        parts.add(shelf.items());
        sources.forEach(source -> parts.add(source.items()));
        Merge now = merge;
        if (!now.madeOf(parts)) {
            now = merged(now, parts);
            merge = now;
        }
        return now.items;
    }

    @Override
    public Map<String, Item> listedAsOf(Instant at) {
        return shelf.itemsAsOf(at);
    }

    @Override
    public Map<String, Item> asOf(Instant at) {
        List<Map<String, Item>> parts = new ArrayList<>();
        parts.add(shelf.itemsAsOf(at));
        sources.forEach(source -> parts.add(source.asOf(at)));
        return merged(Merge.NOTHING, parts).items;
    }

    @Override
    public Set<String> changes(Map<String, Item> before, Map<String, Item> after) {
        Merge now = merge;
        return after == now.items && before == now.before ? now.changed : Items.super.changes(before, after);
    }

    /** Only what changed is put together anew: a sorted copy of the others compares nothing. */
    private static Merge merged(Merge before, List<Map<String, Item>> parts) {
        boolean fresh = before.parts.size() != parts.size();
        SortedMap<String, Item> items = fresh ? new TreeMap<>() : new TreeMap<>(before.items);
        Set<String> changed = new HashSet<>();
        for (int i = 0; i < parts.size(); i++) {
            changed.addAll(fresh ? parts.get(i).keySet() : MapChanges.between(before.parts.get(i), parts.get(i)));
        }
        for (String id : changed) {
            items.remove(id);
            parts.stream()
                    .flatMap(part -> Optional.ofNullable(part.get(id)).stream())
                    .forEach(item -> items.merge(id, item, Item::joinedBy));
        }
        return new Merge(parts, Collections.unmodifiableSortedMap(items), before.items, Set.copyOf(changed));
    }
}
