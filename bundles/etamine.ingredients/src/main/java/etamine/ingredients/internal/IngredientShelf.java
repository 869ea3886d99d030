package etamine.ingredients.internal;

import etamine.ingredients.Ingredient;
import etamine.kitchen.item.Item;
import etamine.storage.Book;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import java.util.Collections;
import java.util.List;
import java.util.Map;
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
    private volatile Listed listed = new Listed(Map.of(), Map.of());

    private record Listed(Map<String, Ingredient> from, Map<String, Item> items) {}

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

    Map<String, String> unreadable() {
        return shelf.unreadable();
    }

    /** The items of the list; the same map as long as the list is the same. */
    Map<String, Item> items() {
        Listed now = listed;
        Map<String, Ingredient> from = shelf.values();
        if (now.from != from) {
            Map<String, Item> items = new TreeMap<>();
            from.forEach((id, ingredient) -> items.put(id, ingredient.item()));
            now = new Listed(from, Collections.unmodifiableMap(items));
            listed = now;
        }
        return now.items;
    }
}
