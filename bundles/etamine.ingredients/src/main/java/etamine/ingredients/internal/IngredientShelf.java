package etamine.ingredients.internal;

import etamine.ingredients.Ingredient;
import etamine.kitchen.exchange.EntryCodec;
import etamine.kitchen.item.Item;
import etamine.storage.Book;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import etamine.storage.Transaction;
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
    private final EntryCodec<Ingredient> form = new EntryCodec<>(IngredientReading::of, IngredientForm::of);
    private final LiveShelf<Ingredient> shelf;
    private volatile Listed listed = new Listed(Map.of(), new TreeMap<>(), new TreeMap<>(), Map.of());

    private record Listed(
            Map<String, Ingredient> from,
            SortedMap<String, Ingredient> ingredients,
            SortedMap<String, Item> items,
            Map<String, Ingredient> merged) {}

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

    EntryCodec<Ingredient> form() {
        return form;
    }

    /** The ingredients that are listed. */
    SortedMap<String, Ingredient> ingredients() {
        return listed().ingredients;
    }

    /** Those that gave way to another one. */
    Map<String, Ingredient> merged() {
        return listed().merged;
    }

    /** Saves an ingredient within a transaction over what this shelf holds, keeping members nobody here knows. */
    long save(Transaction transaction, Ingredient ingredient) {
        return save(transaction, ingredient, revision(ingredient.id()));
    }

    long save(Transaction transaction, Ingredient ingredient, long expected) {
        String json = transaction
                .get(NAME, ingredient.id())
                .filter(document -> !document.removed())
                .map(document -> form.rewrite(document.json(), ingredient))
                .orElseGet(() -> form.write(ingredient));
        return transaction.save(NAME, ingredient.id(), expected, json);
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
        return listed().items;
    }

    private Listed listed() {
        Listed now = listed;
        SortedMap<String, Ingredient> from = shelf.values();
        if (now.from != from) {
            now = listed(from);
            listed = now;
        }
        return now;
    }

    private static Listed listed(SortedMap<String, Ingredient> from) {
        Map<String, Ingredient> merged = new TreeMap<>();
        from.forEach((id, ingredient) -> {
            if (ingredient.mergedInto().isPresent()) {
                merged.put(id, ingredient);
            }
        });
        SortedMap<String, Ingredient> ingredients = from;
        if (!merged.isEmpty()) {
            ingredients = new TreeMap<>(from);
            ingredients.keySet().removeAll(merged.keySet());
        }
        return new Listed(
                from,
                Collections.unmodifiableSortedMap(ingredients),
                Collections.unmodifiableSortedMap(itemsOf(ingredients)),
                Collections.unmodifiableMap(merged));
    }

    /** The items of the list as they stood at that instant; one written later stands as it was first written. */
    SortedMap<String, Item> itemsAsOf(Instant at) {
        return listed(shelf.asOf(at)).items;
    }

    /** Copied as a sorted map, so that nothing is compared: this runs after every change of an ingredient. */
    @SuppressWarnings("unchecked") // every value is replaced before anybody sees it
    private static SortedMap<String, Item> itemsOf(SortedMap<String, Ingredient> from) {
        TreeMap<String, Object> items = new TreeMap<>(from);
        items.replaceAll((id, ingredient) -> ((Ingredient) ingredient).item());
        return (SortedMap<String, Item>) (SortedMap<String, ?>) items;
    }
}
