package etamine.ingredients.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.Facts;
import etamine.testing.VolatileBook;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The module on a book in memory, filled through its section as a file would. */
final class Pantry {
    final VolatileBook book = new VolatileBook();
    final IngredientShelf shelf = new IngredientShelf(book);
    final ShelvedIngredients list = new ShelvedIngredients(shelf);
    final MergedItems items = new MergedItems(shelf);
    final IngredientSection section = new IngredientSection(shelf);

    /** Facts in maps. */
    static final class Known implements Facts {
        private final Map<Class<?>, Map<String, Object>> facts = new HashMap<>();

        @Override
        public <T> void put(Class<T> kind, String id, T fact) {
            facts.computeIfAbsent(kind, any -> new LinkedHashMap<>()).put(id, fact);
        }

        @Override
        public <T> Optional<T> find(Class<T> kind, String id) {
            return Optional.ofNullable(all(kind).get(id));
        }

        @Override
        @SuppressWarnings("unchecked") // put takes only facts of the kind
        public <T> Map<String, T> all(Class<T> kind) {
            return (Map<String, T>) Collections.unmodifiableMap(facts.getOrDefault(kind, Map.of()));
        }

        @Override
        public boolean covers(Class<?> kind) {
            return facts.containsKey(kind);
        }
    }

    static JsonNode json(String text) {
        try {
            return IngredientForm.JSON.readTree(text);
        } catch (JsonProcessingException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }

    /** Writes the section's entries, all of which must be good. */
    void load(String section) {
        List<ExchangeEntry> entries = this.section.read(json(section), new Known());
        entries.forEach(entry -> {
            if (!entry.troubles().isEmpty()) {
                throw new IllegalArgumentException(entry.troubles().toString());
            }
        });
        book.write("Load", transaction -> {
            entries.forEach(entry -> entry.write(transaction));
            return 0;
        });
    }

    /** What is wrong with the entries, as pointer and sentence. */
    List<String> troubles(String section) {
        return this.section.read(json(section), new Known()).stream()
                .flatMap(entry -> entry.troubles().stream()
                        .map(trouble -> entry.pointer() + trouble.pointer() + " " + trouble.problem()))
                .toList();
    }
}
