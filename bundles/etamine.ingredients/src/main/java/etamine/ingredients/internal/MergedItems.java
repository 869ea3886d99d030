package etamine.ingredients.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemSource;
import etamine.kitchen.item.Items;
import etamine.measures.Equivalence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private volatile Merge merge = new Merge(List.of(), Map.of());

    private record Merge(List<Map<String, Item>> parts, Map<String, Item> items) {
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
            now = new Merge(parts, merged(parts));
            merge = now;
        }
        return now.items;
    }

    private static Map<String, Item> merged(List<Map<String, Item>> parts) {
        Map<String, Item> items = new TreeMap<>();
        parts.forEach(part -> part.forEach((id, item) -> items.merge(id, item, MergedItems::join)));
        return Collections.unmodifiableMap(items);
    }

    private static Item join(Item own, Item contributed) {
        List<Equivalence> measures = new ArrayList<>(own.measures());
        contributed.measures().stream()
                .filter(measure -> !measures.contains(measure))
                .forEach(measures::add);
        return new Item(
                own.id(),
                own.name(),
                own.group(),
                own.made() || contributed.made(),
                own.storage(),
                own.keeps(),
                own.countIn(),
                measures,
                own.preparations(),
                own.allergens(),
                own.writtenPrice());
    }
}
