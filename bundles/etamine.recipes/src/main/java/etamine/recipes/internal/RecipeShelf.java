package etamine.recipes.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.internal.form.RecipeForm;
import etamine.storage.Book;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/** The shelf of recipes and its graph, which is mended when a recipe has changed. Thread-safe. */
@Component(service = RecipeShelf.class)
public final class RecipeShelf {
    public static final String NAME = "recipes";
    public static final String MODULE = "etamine.recipes";

    private final Book book;
    private final RecipeForm form = new RecipeForm();
    private final LiveShelf<Recipe> shelf;
    private volatile Built built;

    private record Built(Map<String, Recipe> from, RecipeGraph graph) {}

    /** Opens the shelf of that book. */
    @Activate
    public RecipeShelf(@Reference Book book) {
        this.book = book;
        book.prepare(new ModuleFormat(MODULE, 1, List.of(), List.of()));
        shelf = new LiveShelf<>(book, NAME, form);
        built = new Built(shelf.values(), RecipeGraph.of(shelf.values()));
    }

    @Deactivate
    void close() {
        shelf.close();
    }

    public Book book() {
        return book;
    }

    public RecipeForm form() {
        return form;
    }

    public long revision(String id) {
        return shelf.revision(id);
    }

    public Map<String, String> unreadable() {
        return shelf.unreadable();
    }

    /** The graph of the recipes as they stood at that instant; one written later stands as it was first written. */
    public RecipeGraph graphAsOf(Instant at) {
        return RecipeGraph.of(shelf.asOf(at));
    }

    /** When a recipe was first written; empty when it never was. */
    public Optional<Instant> firstWritten(String id) {
        return shelf.firstWritten(id);
    }

    /** The graph of the recipes as they are; the same one as long as they are the same. */
    public RecipeGraph graph() {
        Built now = built;
        Map<String, Recipe> from = shelf.values();
        if (now.from != from) {
            now = new Built(from, now.graph.with(from));
            built = now;
        }
        return now.graph;
    }
}
