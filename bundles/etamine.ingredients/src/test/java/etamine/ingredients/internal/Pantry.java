package etamine.ingredients.internal;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.testing.SetFacts;
import etamine.testing.VolatileBook;
import java.time.Clock;
import java.util.List;

/** The module on a book in memory, filled through its section as a file would. */
final class Pantry {
    final VolatileBook book;
    final IngredientShelf shelf;
    final ShelvedIngredients list;
    final MergedItems items;
    final IngredientSection section;

    Pantry() {
        this(new VolatileBook());
    }

    /** On a book whose documents that clock dates. */
    Pantry(Clock clock) {
        this(new VolatileBook(clock));
    }

    private Pantry(VolatileBook book) {
        this.book = book;
        shelf = new IngredientShelf(book);
        list = new ShelvedIngredients(shelf);
        items = new MergedItems(shelf);
        section = new IngredientSection(shelf);
    }

    static JsonNode json(String text) {
        return EntryJson.read("{\"section\": " + text + "}").path("section");
    }

    /** Writes the section's entries, all of which must be good. */
    void load(String section) {
        List<ExchangeEntry> entries = this.section.read(json(section), new SetFacts());
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
        return this.section.read(json(section), new SetFacts()).stream()
                .flatMap(entry -> entry.troubles().stream()
                        .map(trouble -> entry.pointer() + trouble.pointer() + " " + trouble.problem()))
                .toList();
    }
}
