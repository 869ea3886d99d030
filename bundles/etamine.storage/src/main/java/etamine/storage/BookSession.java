package etamine.storage;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Keeps at most one book open. The open {@link Book} is a service in the registry for as long as it is open, so that
 * everything that needs it comes and goes with it. Thread-safe.
 */
@ProviderType
public interface BookSession {

    /** Opens the book at {@code location}, closing the one that is open; on failure none is open. */
    Book open(String location);

    /** Creates an empty book at {@code location} and opens it, closing the one that is open. */
    Book create(String location);

    /** Closes the open book, if any. */
    void close();

    /** The open book. */
    Optional<Book> current();
}
