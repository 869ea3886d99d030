package etamine.ingredients.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.ingredients.Ingredient;
import etamine.ingredients.StarterSet;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.EntryReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The starter set as a file of the bundle, in the exchange form. */
@Component
public final class ResourceStarters implements StarterSet {
    private static final String RESOURCE = "/starter/ingredients.json";

    private final IngredientShelf shelf;

    /** Starters for that shelf. */
    @Activate
    public ResourceStarters(@Reference IngredientShelf shelf) {
        this.shelf = shelf;
    }

    @Override
    public List<Ingredient> all() {
        ObjectNode file = EntryJson.read(text());
        List<Ingredient> all = new ArrayList<>();
        file.path("ingredients").forEach(entry -> all.add(IngredientReading.of(new EntryReader(entry))));
        return all;
    }

    @Override
    public List<Ingredient> missing() {
        Set<NameKey> names = shelf.ingredients().values().stream()
                .map(ingredient -> NameKey.of(ingredient.item().name()))
                .collect(Collectors.toSet());
        return all().stream()
                .filter(starter -> shelf.revision(starter.id()) == 0)
                .filter(starter -> !names.contains(NameKey.of(starter.item().name())))
                .toList();
    }

    @Override
    public int add() {
        List<Ingredient> missing = missing();
        if (!missing.isEmpty()) {
            shelf.book().write("Add " + missing.size() + " common ingredients", transaction -> {
                missing.forEach(starter -> shelf.save(transaction, starter));
                return missing.size();
            });
        }
        return missing.size();
    }

    private static String text() {
        try (InputStream in = ResourceStarters.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("This bundle has lost its " + RESOURCE + "; install it anew.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
