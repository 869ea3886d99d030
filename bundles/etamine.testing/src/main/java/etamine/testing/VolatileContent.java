package etamine.testing;

import etamine.storage.Commit;
import etamine.storage.Document;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.medium.Batch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Supplier;

/** What a volatile book holds. Readers see whole batches only. */
final class VolatileContent {
    private final ReadWriteLock lock = new ReentrantReadWriteLock();
    private final Map<String, Map<String, List<Document>>> shelves = new TreeMap<>();
    private final Map<String, Map<String, LedgerEntry>> ledgers = new TreeMap<>();
    private final Map<String, Map<String, List<LedgerEntry>>> reversals = new TreeMap<>();
    private final Map<String, LedgerForm> forms = new TreeMap<>();
    private final Map<String, Integer> modules = new TreeMap<>();
    private long revision;

    <T> T read(Supplier<T> reading) {
        lock.readLock().lock();
        try {
            return reading.get();
        } finally {
            lock.readLock().unlock();
        }
    }

    void apply(Batch batch) {
        lock.writeLock().lock();
        try {
            batch.format().ifPresent(this::record);
            batch.commit().ifPresent(this::apply);
        } finally {
            lock.writeLock().unlock();
        }
    }

    private void record(ModuleFormat format) {
        modules.put(format.module(), format.version());
        format.ledgers().forEach(this::shape);
    }

    private void apply(Commit commit) {
        commit.documents().forEach(change -> add(change.shelf(), change.document()));
        commit.entries().forEach(posting -> add(posting.ledger(), posting.entry()));
        revision = commit.revision();
    }

    void shape(LedgerForm form) {
        forms.put(form.name(), form);
    }

    void record(String module, int version) {
        modules.put(module, version);
    }

    void add(String shelf, Document document) {
        shelves.computeIfAbsent(shelf, name -> new TreeMap<>())
                .computeIfAbsent(document.id(), id -> new ArrayList<>())
                .add(document);
    }

    void add(String ledger, LedgerEntry entry) {
        ledgers.computeIfAbsent(ledger, name -> new LinkedHashMap<>()).put(entry.id(), entry);
        entry.reverses()
                .ifPresent(id -> reversals
                        .computeIfAbsent(ledger, name -> new TreeMap<>())
                        .computeIfAbsent(id, reversed -> new ArrayList<>())
                        .add(entry));
    }

    void revision(long last) {
        revision = last;
    }

    long revision() {
        return revision;
    }

    Map<String, Map<String, List<Document>>> shelves() {
        return shelves;
    }

    Map<String, Map<String, LedgerEntry>> ledgers() {
        return ledgers;
    }

    Map<String, LedgerForm> forms() {
        return forms;
    }

    Map<String, Integer> modules() {
        return modules;
    }

    List<Document> revisions(String shelf, String id) {
        return shelves.getOrDefault(shelf, Map.of()).getOrDefault(id, List.of());
    }

    List<LedgerEntry> reversals(String ledger, String id) {
        return reversals.getOrDefault(ledger, Map.of()).getOrDefault(id, List.of());
    }

    Optional<Document> latest(String shelf, String id) {
        List<Document> revisions = revisions(shelf, id);
        return revisions.isEmpty() ? Optional.empty() : Optional.of(revisions.get(revisions.size() - 1));
    }

    boolean holds(LedgerForm form) {
        LedgerForm known = forms.get(form.name());
        return known != null
                && known.keys().containsAll(form.keys())
                && known.measures().containsAll(form.measures());
    }
}
