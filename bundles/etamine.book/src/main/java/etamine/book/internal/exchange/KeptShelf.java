package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import etamine.storage.Book;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Sections that came in files while no module owned them, untouched, one document for each. */
final class KeptShelf {
    private static final String NAME = "kept";

    private final Book book;

    KeptShelf(Book book) {
        this.book = book;
    }

    /** The kept sections by name. */
    Map<String, JsonNode> all() {
        Map<String, JsonNode> kept = new LinkedHashMap<>();
        book.shelf(NAME).all().forEach(document -> kept.put(document.id(), Json.parse(document.json())));
        return kept;
    }

    /** Whether a section of that name is kept. */
    boolean has(String section) {
        return book.shelf(NAME).get(section).isPresent();
    }

    /** Puts a section by, joined to what is kept of it already. */
    void keep(Transaction transaction, String section, JsonNode value) {
        Optional<Document> present = transaction.get(NAME, section).filter(document -> !document.removed());
        JsonNode joined = present.map(document -> join(Json.parse(document.json()), value))
                .orElse(value);
        transaction.save(NAME, section, Document.ANY, joined.toString());
    }

    /** Lets go of a section that found its module. */
    void release(Transaction transaction, String section) {
        transaction.remove(NAME, section, Document.ANY);
    }

    /** How many entries a section has. */
    static int count(JsonNode value) {
        return value.isArray() ? value.size() : 1;
    }

    /** New elements replace those of the same id; equal ones stay once. What is no array is replaced. */
    static JsonNode join(JsonNode before, JsonNode after) {
        if (!before.isArray() || !after.isArray()) {
            return after;
        }
        ArrayNode joined = ((ArrayNode) before).deepCopy();
        for (JsonNode element : after) {
            int at = place(joined, element);
            if (at < 0) {
                joined.add(element);
            } else {
                joined.set(at, element);
            }
        }
        return joined;
    }

    private static int place(ArrayNode array, JsonNode element) {
        JsonNode id = element.path("id");
        for (int i = 0; i < array.size(); i++) {
            JsonNode other = array.get(i);
            if (other.equals(element) || !id.isMissingNode() && id.equals(other.path("id"))) {
                return i;
            }
        }
        return -1;
    }
}
