package etamine.storage;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Undo and redo over whole transactions, derived from what they changed: documents get their former content as a new
 * revision, ledger entries are reversed. Thread-safe.
 */
@ProviderType
public interface History {

    /** What {@link #undo} would take back. */
    Optional<String> undoable();

    /** What {@link #redo} would do again. */
    Optional<String> redoable();

    /**
     * Takes back the last transaction, in a transaction of its own.
     *
     * @return the label of what was taken back; empty if there was nothing
     * @throws BookException with reason STALE if one of its documents has been changed since by someone else
     */
    Optional<String> undo();

    /** Does again what was last undone; a new transaction clears what could be redone. */
    Optional<String> redo();
}
