package etamine.ingredients.internal;

import etamine.ingredients.Ingredient;
import etamine.kitchen.item.Item;
import etamine.storage.Book;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/** The shelf of ingredients, read once and kept up to date. Thread-safe. */
@Component(service = IngredientShelf.class)
public final class IngredientShelf {
    static final String NAME = "ingredients";
    static final String MODULE = "etamine.ingredients";

    private final Book book;
    private final IngredientForm form = new IngredientForm();
    private final LiveShelf<Ingredient> shelf;
    private volatile Listed listed = new Listed(Map.of(), new TreeMap<>());

    private record Listed(Map<String, Ingredient> from, SortedMap<String, Item> items) {}

    /** Opens the shelf of that book. */
    @Activate
    public IngredientShelf(@Reference Book book) {
        this.book = book;
        book.prepare(new ModuleFormat(MODULE, 1, List.of(), List.of()));
        shelf = new LiveShelf<>(book, NAME, form);
    }

    @Deactivate
    void close() {
        shelf.close();
    }

    Book book() {
        return book;
    }

    IngredientForm form() {
        return form;
    }

    Map<String, Ingredient> ingredients() {
        return shelf.values();
    }

    long revision(String id) {
        return shelf.revision(id);
    }

    /** When the present revision of an ingredient was written. */
    Optional<Instant> writtenAt(String id) {
        return shelf.writtenAt(id);
    }

    Map<String, String> unreadable() {
        return shelf.unreadable();
    }

    /** The items of the list; the same map as long as the list is the same. */
    SortedMap<String, Item> items() {
        Listed now = listed;
        SortedMap<String, Ingredient> from = shelf.values();
        if (now.from != from) {
            now = new Listed(from, Collections.unmodifiableSortedMap(itemsOf(from)));
            listed = now;
        }
        return now.items;
    }

    /** The items of the list as they stood at that instant; one written later stands as it was first written. */
    SortedMap<String, Item> itemsAsOf(Instant at) {
        return Collections.unmodifiableSortedMap(itemsOf(shelf.asOf(at)));
    }

    /** Copied as a sorted map, so that nothing is compared: this runs after every change of an ingredient. */
    @SuppressWarnings("unchecked") // every value is replaced before anybody sees it
    private static SortedMap<String, Item> itemsOf(SortedMap<String, Ingredient> from) {
        TreeMap<String, Object> items = new TreeMap<>(from);
        items.replaceAll((id, ingredient) -> ((Ingredient) ingredient).item());
        return (SortedMap<String, Item>) (SortedMap<String, ?>) items;
    }
}
