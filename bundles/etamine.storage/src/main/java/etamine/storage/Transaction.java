package etamine.storage;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** Changes that become durable together. Valid only inside {@link Book#write}, on that thread. */
@ProviderType
public interface Transaction {

    /** The document as this transaction sees it. */
    Optional<Document> get(String shelf, String id);

    /**
     * Saves a new revision; a document saved several times in one transaction gets one revision. Saving what is already there changes nothing and keeps the revision.
     *
     * @param expected the revision that was read; 0 when the document must not exist yet (a removed one counts as not
     *     existing); {@link Document#ANY} to save over whatever is there. The revision from before the transaction also fits
     *     what the transaction itself has made of it
     * @return the document's revision now
     * @throws BookException with reason STALE if the document has another revision
     */
    long save(String shelf, String id, long expected, String json);

    /** Removes the document, leaving a tombstone in its history; see {@link #save} for {@code expected}. */
    void remove(String shelf, String id, long expected);

    /**
     * Appends an entry to a ledger.
     *
     * @throws BookException with reason EXISTS if an entry of that id is already there
     */
    void append(String ledger, LedgerEntry entry);

    /**
     * Appends the reversal of an entry: same time and keys, measures negated, {@code reverses} set, and as detail
     * {@code {"reason": ...}}. Its id is that of the entry with {@code ~1} behind it.
     *
     * @throws BookException with reason EXISTS if it has been reversed and that reversal still stands
     */
    void reverse(String ledger, String entryId, String reason);
}
