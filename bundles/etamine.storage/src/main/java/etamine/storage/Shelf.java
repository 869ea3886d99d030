package etamine.storage;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** Documents of one kind, read side. Thread-safe; each call sees one consistent state. */
@ProviderType
public interface Shelf {

    /** The shelf's name. */
    String name();

    /** The present revision of a document; empty if there is none or it was removed. */
    Optional<Document> get(String id);

    /** All present documents, by id. */
    List<Document> all();

    /** The identifiers of all present documents, in order; for shelves whose documents are too large to be read at once. */
    default List<String> ids() {
        return all().stream().map(Document::id).toList();
    }

    /** Every revision of a document, oldest first, removals included. */
    List<Document> history(String id);

    /** The documents as they stood at that instant, by id: of each the last revision written by then. */
    List<Document> asOf(Instant at);

    /** The first revision of every document there ever was, by id. */
    List<Document> firsts();
}
