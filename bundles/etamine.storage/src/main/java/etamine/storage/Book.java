package etamine.storage;

import etamine.base.Progress;
import etamine.base.Subscription;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.osgi.annotation.versioning.ProviderType;

/**
 * One kitchen's data, open. Thread-safe: reads run beside each other, writes one after the other. Every method but
 * {@link #close} throws {@link BookException} when the medium fails.
 */
@ProviderType
public interface Book extends AutoCloseable {

    /** Where it is: a file path or a JDBC URL. */
    String location();

    /** Why it may only be read; empty when it may be written. */
    Optional<String> readOnly();

    /**
     * Makes the ledgers of a module and runs those of its migrations that this book has not seen, all in one
     * transaction. Call it once before the module's first read. A module format newer than {@code format} makes the
     * whole book read-only.
     */
    void prepare(ModuleFormat format);

    /** The shelf of that name; it exists as soon as somebody saves on it. */
    Shelf shelf(String name);

    /** The ledger of that name, after a {@link ModuleFormat} declared it. */
    Ledger ledger(String name);

    /**
     * Runs {@code work} in one transaction and returns when it is durable; if it throws, nothing was changed. A
     * transaction without effect leaves no trace. Listeners run on the calling thread before this returns.
     *
     * @param label what was done, in words for the undo menu, such as {@code Change par of Cream}
     * @throws BookException if the book is read-only, a revision is stale, or the medium fails
     */
    <T> T write(String label, Work<T> work);

    /** How many transactions this book has seen; it grows with each, so derived figures can tell they are old. */
    long revision();

    /**
     * The last revision that everybody who {@link #follow follows} the book has taken in. What is worked out from live
     * shelves goes by this: {@link #revision} is already higher while they still hear of a transaction.
     */
    default long followed() {
        return revision();
    }

    /** What can be undone and redone since the book was opened. */
    History history();

    /** Calls {@code listener} after each transaction, on the thread that wrote. */
    Subscription onCommit(Consumer<Commit> listener);

    /**
     * The same for what holds a part of the book as values: it is told before every {@link #onCommit listener}, so that
     * none of them reads an old value. It only takes the transaction in and never writes.
     */
    default Subscription follow(Consumer<Commit> follower) {
        return onCommit(follower);
    }

    /**
     * Writes a complete copy to a new file and verifies it by opening it; the book stays usable meanwhile.
     *
     * @throws BookException if the target exists, there is no room, or the copy fails its check (it is then removed)
     */
    void backup(Path target, Progress progress);

    /** Checks the medium itself; empty when sound, else what is damaged. */
    Optional<String> integrity();

    @Override
    void close();

    /**
     * Work inside a transaction.
     *
     * @param <T> what it finds out
     */
    @FunctionalInterface
    interface Work<T> {
        /** Does the work; may throw to undo everything it did. */
        T in(Transaction transaction);
    }
}
