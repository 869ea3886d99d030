package etamine.storage.medium;

import etamine.base.Progress;
import etamine.storage.Document;
import etamine.storage.Ledger;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * Where one open book keeps its content. Reads come from any thread, also while another thread commits, and see whole
 * batches only. Commits come one at a time. Every method but {@link #close} throws
 * {@link etamine.storage.BookException} when the medium fails or is closed.
 */
@ConsumerType
public interface Medium {

    /** A file path or a JDBC URL. */
    String location();

    /** Why it may only be read; empty when it may be written. */
    Optional<String> readOnly();

    /** The revision of the last commit; 0 for an empty book. */
    long revision();

    /** The latest revision of a document; a tombstone if it was removed, empty if it never existed. */
    Optional<Document> latest(String shelf, String id);

    /** All documents of a shelf that are not removed, by id. */
    List<Document> present(String shelf);

    /** The identifiers of all documents of a shelf that are not removed, in order. */
    default List<String> presentIds(String shelf) {
        return present(shelf).stream().map(Document::id).toList();
    }

    /** Every revision of a document, oldest first, tombstones included. */
    List<Document> revisions(String shelf, String id);

    /** Of each document of a shelf the last revision written by then, by id; without those removed by then. */
    List<Document> asOf(String shelf, Instant at);

    /** The first revision of every document a shelf ever had, by id. */
    List<Document> firsts(String shelf);

    /** The format recorded for a module; 0 if none. */
    int moduleFormat(String module);

    /** Whether the format is recorded and its ledgers have all their columns, so that nothing has to be made. */
    boolean holds(ModuleFormat format);

    /** The read side of a ledger; one that was never made is empty. */
    Ledger ledger(LedgerForm form);

    /** The entries that reverse the given one, in order of writing. */
    List<LedgerEntry> reversals(LedgerForm form, String entryId);

    /** Makes the batch durable as a whole, or throws and keeps nothing of it. */
    void commit(Batch batch);

    /** See {@link etamine.storage.Book#backup}. */
    void backup(Path target, Progress progress);

    /** See {@link etamine.storage.Book#integrity}. */
    Optional<String> integrity();

    /** Lets go of everything it holds. */
    void close();
}
