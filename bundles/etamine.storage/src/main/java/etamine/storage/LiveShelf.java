package etamine.storage;

import etamine.base.Exemption;
import etamine.base.Subscription;
import java.time.Instant;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A shelf as values, kept up to date with the book: read once, then changed by each commit before
 * {@link Book#write} returns. Documents that cannot be read are kept aside in {@link #unreadable} and never lost.
 * Thread-safe; {@link #values} is an immutable snapshot.
 *
 * @param <T> the value
 */
@Exemption(
        rule = "exported-types",
        because = "every module follows its shelf the same way, over whatever book it is given")
public final class LiveShelf<T> implements AutoCloseable {
    private final Shelf shelf;
    private final String name;
    private final Codec<T> codec;
    private final Subscription subscription;
    private volatile State<T> state = new State<>(new TreeMap<>(), Map.of(), Map.of(), new TreeMap<>());

    private record State<T>(
            SortedMap<String, T> values,
            Map<String, Long> revisions,
            Map<String, Instant> written,
            SortedMap<String, String> unreadable) {}

    /** Reads the shelf and follows it until closed. */
    public LiveShelf(Book book, String name, Codec<T> codec) {
        this.shelf = book.shelf(name);
        this.name = name;
        this.codec = codec;
        synchronized (this) {
            this.subscription = book.follow(this::follow);
            Draft draft = new Draft();
            shelf.all().forEach(draft::take);
            state = draft.freeze();
        }
    }

    /** The values by id, in the order of ids. */
    public SortedMap<String, T> values() {
        return state.values;
    }

    /** One value. */
    public Optional<T> get(String id) {
        return Optional.ofNullable(state.values.get(id));
    }

    /** The revision of a value, to save against; 0 if there is none. */
    public long revision(String id) {
        return state.revisions.getOrDefault(id, 0L);
    }

    /**
     * The values as they stood at that instant, by id; those written later stand as they were first written. What cannot
     * be read is left out. Reads the book, so call it in the background.
     */
    public SortedMap<String, T> asOf(Instant at) {
        SortedMap<String, T> then = new TreeMap<>();
        shelf.firsts().stream()
                .filter(document -> document.at().isAfter(at))
                .forEach(document -> readable(document).ifPresent(value -> then.put(document.id(), value)));
        shelf.asOf(at).forEach(document -> readable(document).ifPresent(value -> then.put(document.id(), value)));
        return Collections.unmodifiableSortedMap(then);
    }

    /** When a document was first written; empty when it never was. Reads the book. */
    public Optional<Instant> firstWritten(String id) {
        return shelf.history(id).stream().findFirst().map(Document::at);
    }

    private Optional<T> readable(Document document) {
        try {
            return Optional.of(codec.read(document.id(), document.json()));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    /** When the present revision of a value was written; empty when there is none. */
    public Optional<Instant> writtenAt(String id) {
        return Optional.ofNullable(state.written.get(id));
    }

    /** Documents that could not be read, id to reason. */
    public Map<String, String> unreadable() {
        return state.unreadable;
    }

    /** Saves a value within a transaction, against the revision this shelf holds. */
    public void save(Transaction transaction, String id, T value) {
        transaction.save(name, id, revision(id), codec.write(value));
    }

    /** Removes a value within a transaction, against the revision this shelf holds. */
    public void remove(Transaction transaction, String id) {
        transaction.remove(name, id, revision(id));
    }

    @Override
    public void close() {
        subscription.close();
    }

    private synchronized void follow(Commit commit) {
        Draft draft = null;
        for (Commit.DocumentChange change : commit.documents()) {
            if (change.shelf().equals(name)) {
                draft = draft == null ? new Draft(state) : draft;
                draft.take(change.document());
            }
        }
        if (draft != null) {
            state = draft.freeze();
        }
    }

    private final class Draft {
        private final SortedMap<String, T> values;
        private final Map<String, Long> revisions;
        private final Map<String, Instant> written;
        private final SortedMap<String, String> unreadable;

        Draft() {
            this(new State<>(new TreeMap<>(), Map.of(), Map.of(), new TreeMap<>()));
        }

        /** Copies of sorted maps are made without comparing anything, which counts with thousands of documents. */
        Draft(State<T> from) {
            values = new TreeMap<>(from.values);
            revisions = new HashMap<>(from.revisions);
            written = new HashMap<>(from.written);
            unreadable = new TreeMap<>(from.unreadable);
        }

        void take(Document document) {
            values.remove(document.id());
            unreadable.remove(document.id());
            revisions.remove(document.id());
            written.remove(document.id());
            if (document.removed()) {
                return;
            }
            revisions.put(document.id(), document.revision());
            written.put(document.id(), document.at());
            try {
                values.put(document.id(), codec.read(document.id(), document.json()));
            } catch (IllegalArgumentException problem) {
                unreadable.put(document.id(), String.valueOf(problem.getMessage()));
            }
        }

        State<T> freeze() {
            return new State<>(
                    Collections.unmodifiableSortedMap(values),
                    Collections.unmodifiableMap(revisions),
                    Collections.unmodifiableMap(written),
                    Collections.unmodifiableSortedMap(unreadable));
        }
    }
}
