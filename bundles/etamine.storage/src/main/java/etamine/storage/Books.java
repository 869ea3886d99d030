package etamine.storage;

import etamine.base.Progress;
import java.nio.file.Path;
import org.osgi.annotation.versioning.ProviderType;

/** Creates, opens, restores and inspects books. Thread-safe. */
@ProviderType
public interface Books {

    /** Whether this provider understands the location: a file path, or a JDBC URL. */
    boolean accepts(String location);

    /** Whether a book exists there; a foreign file counts as existing, so that it is never overwritten. */
    boolean exists(String location);

    /**
     * Creates an empty book.
     *
     * @throws BookException if something is already there or it cannot be written
     */
    Book create(String location);

    /**
     * Opens an existing book; one written by a newer program opens {@linkplain Book#readOnly() read-only}.
     *
     * @throws BookException if it is missing, not a book, damaged, or in use by another process; the message says which
     */
    Book open(String location);

    /**
     * Puts a verified copy of a backup where no book is yet.
     *
     * @throws BookException if the backup is not a sound book, or the target exists
     */
    void restore(Path backup, String location, Progress progress);
}
