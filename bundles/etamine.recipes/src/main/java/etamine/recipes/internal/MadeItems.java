package etamine.recipes.internal;

import etamine.base.MapChanges;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemSource;
import etamine.kitchen.item.Items;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The items that recipes make, worked out anew only when a recipe or the ingredient list has changed. */
@Component(service = {ItemSource.class, MadeItems.class})
public final class MadeItems implements ItemSource {
    private final RecipeShelf shelf;
    private final KnownItems known;
    private volatile Made made;

    private record Made(RecipeGraph graph, Map<String, Item> listed, FactRoll roll, SortedMap<String, Item> items) {
        static Made of(RecipeGraph graph, Map<String, Item> listed) {
            FactRoll roll = FactRoll.of(graph, listed);
            return new Made(graph, listed, roll, MadeThings.of(roll));
        }

        Made with(RecipeGraph nowGraph, Map<String, Item> nowListed) {
            if (graph == nowGraph && sameFacts(listed, nowListed)) {
                return new Made(graph, nowListed, roll, items);
            }
            FactRoll rolled = roll.with(nowGraph, nowListed);
            return new Made(nowGraph, nowListed, rolled, MadeThings.of(rolled, items, roll));
        }
    }

    /** What the recipes on that shelf make of the items known. */
    @Activate
    public MadeItems(@Reference RecipeShelf shelf, @Reference KnownItems known) {
        this.shelf = shelf;
        this.known = known;
        this.made = Made.of(RecipeGraph.of(Map.of()), Map.of());
    }

    @Override
    public SortedMap<String, Item> items() {
        return now().items;
    }

    /** The items that only archived recipes make; the same set as long as the recipes are the same. */
    public Set<String> archived() {
        return shelf.graph().archivedItems();
    }

    /** The allergens and diets of everything, as they go into the made items; the same one as long as they are. */
    public FactRoll roll() {
        return now().roll;
    }

    /** The made items if the recipes were those of that graph. */
    SortedMap<String, Item> itemsWith(RecipeGraph graph) {
        Made now = now();
        return now.with(graph, now.listed).items;
    }

    private Made now() {
        RecipeGraph graph = shelf.graph();
        Map<String, Item> listed = known.items().map(Items::listed).orElseGet(Map::of);
        Made now = made;
        if (now.graph != graph || now.listed != listed) {
            now = now.with(graph, listed);
            made = now;
        }
        return now;
    }

    @Override
    public Map<String, Item> asOf(Instant at) {
        Map<String, Item> listed =
                known.items().map(items -> items.listedAsOf(at)).orElseGet(Map::of);
        return MadeThings.of(shelf.graphAsOf(at), listed);
    }

    /** Whether nothing that goes into made items has changed; most changes of an ingredient are of its price. */
    private static boolean sameFacts(Map<String, Item> then, Map<String, Item> now) {
        return MapChanges.between(then, now).stream()
                .allMatch(id -> facts(then, id).equals(facts(now, id)));
    }

    private static Optional<List<Object>> facts(Map<String, Item> items, String id) {
        return Optional.ofNullable(items.get(id)).map(item -> List.of(item.allergens(), item.diet()));
    }
}
