package etamine.recipes.internal;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemChanges;
import etamine.kitchen.item.ItemSource;
import etamine.kitchen.item.Items;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The items that recipes make, worked out anew only when a recipe or the ingredient list has changed. */
@Component(service = {ItemSource.class, MadeItems.class})
public final class MadeItems implements ItemSource {
    private final RecipeShelf shelf;
    private final KnownItems known;
    private volatile Made made;

    private record Made(RecipeGraph graph, Map<String, Item> listed, Map<String, Item> items) {}

    /** What the recipes on that shelf make of the items known. */
    @Activate
    public MadeItems(@Reference RecipeShelf shelf, @Reference KnownItems known) {
        this.shelf = shelf;
        this.known = known;
        this.made = new Made(RecipeGraph.of(Map.of()), Map.of(), Map.of());
    }

    @Override
    public Map<String, Item> items() {
        RecipeGraph graph = shelf.graph();
        Map<String, Item> listed = known.items().map(Items::listed).orElseGet(Map::of);
        Made now = made;
        if (now.graph != graph || now.listed != listed) {
            boolean same = now.graph == graph && sameAllergens(now.listed, listed);
            now = new Made(graph, listed, same ? now.items : MadeThings.of(graph, listed));
            made = now;
        }
        return now.items;
    }

    @Override
    public Map<String, Item> asOf(Instant at) {
        Map<String, Item> listed =
                known.items().map(items -> items.listedAsOf(at)).orElseGet(Map::of);
        return MadeThings.of(shelf.graphAsOf(at), listed);
    }

    /** Whether nothing that goes into made items has changed; most changes of an ingredient are of its price. */
    private static boolean sameAllergens(Map<String, Item> then, Map<String, Item> now) {
        return ItemChanges.between(then, now).stream()
                .allMatch(id -> allergens(then, id).equals(allergens(now, id)));
    }

    private static Optional<Allergens> allergens(Map<String, Item> items, String id) {
        return Optional.ofNullable(items.get(id)).map(Item::allergens);
    }
}
