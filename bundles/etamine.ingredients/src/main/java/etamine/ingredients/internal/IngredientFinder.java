package etamine.ingredients.internal;

import etamine.base.Subject;
import etamine.kitchen.find.Finder;
import etamine.kitchen.find.NameMatch;
import etamine.kitchen.item.Item;
import java.util.Comparator;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds ingredients by name. */
@Component
public final class IngredientFinder implements Finder {
    private final IngredientShelf shelf;

    /** Finds on that shelf. */
    @Activate
    public IngredientFinder(@Reference IngredientShelf shelf) {
        this.shelf = shelf;
    }

    private record Hit(Item item, int rank) {}

    @Override
    public List<Found> find(String text, int atMost) {
        NameMatch match = new NameMatch(text);
        return shelf.items().values().stream()
                .flatMap(item -> match.rank(item.name()).stream().mapToObj(rank -> new Hit(item, rank)))
                .sorted(Comparator.comparingInt(Hit::rank).thenComparing(hit -> hit.item.name()))
                .limit(atMost)
                .map(Hit::item)
                .map(item -> new Found(new Subject("item", item.id()), item.name(), hint(item)))
                .toList();
    }

    private static String hint(Item item) {
        return item.group().isEmpty() ? "ingredient" : item.group();
    }
}
