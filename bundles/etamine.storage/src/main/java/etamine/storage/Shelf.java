package etamine.storage;

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

    /** Every revision of a document, oldest first, removals included. */
    List<Document> history(String id);
}
