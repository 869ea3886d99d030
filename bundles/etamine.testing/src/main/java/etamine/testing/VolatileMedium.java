package etamine.testing;

import etamine.base.Progress;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Document;
import etamine.storage.Ledger;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.medium.Batch;
import etamine.storage.medium.Medium;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** A medium in memory. */
final class VolatileMedium implements Medium {
    private final String location;
    private final VolatileContent content;
    private final Runnable onClose;
    private volatile boolean closed;

    VolatileMedium(String location, VolatileContent content, Runnable onClose) {
        this.location = location;
        this.content = content;
        this.onClose = onClose;
    }

    @Override
    public String location() {
        return location;
    }

    @Override
    public Optional<String> readOnly() {
        return Optional.empty();
    }

    @Override
    public long revision() {
        return read(content::revision);
    }

    @Override
    public Optional<Document> latest(String shelf, String id) {
        return read(() -> content.latest(shelf, id));
    }

    @Override
    public List<Document> present(String shelf) {
        return read(() -> content.shelves().getOrDefault(shelf, Map.of()).keySet().stream()
                .flatMap(id -> content.latest(shelf, id).stream())
                .filter(document -> !document.removed())
                .toList());
    }

    @Override
    public List<Document> revisions(String shelf, String id) {
        return read(() -> List.copyOf(content.revisions(shelf, id)));
    }

    @Override
    public List<Document> asOf(String shelf, Instant at) {
        return read(() -> content.shelves().getOrDefault(shelf, Map.of()).values().stream()
                .flatMap(revisions -> lastBy(revisions, at).stream())
                .filter(document -> !document.removed())
                .toList());
    }

    private static Optional<Document> lastBy(List<Document> revisions, Instant at) {
        return revisions.stream().filter(document -> !document.at().isAfter(at)).reduce((earlier, later) -> later);
    }

    @Override
    public List<Document> firsts(String shelf) {
        return read(() -> content.shelves().getOrDefault(shelf, Map.of()).values().stream()
                .map(revisions -> revisions.get(0))
                .toList());
    }

    @Override
    public int moduleFormat(String module) {
        return read(() -> content.modules().getOrDefault(module, 0));
    }

    @Override
    public boolean holds(ModuleFormat format) {
        return read(() -> content.modules().getOrDefault(format.module(), 0) == format.version()
                && format.ledgers().stream().allMatch(content::holds));
    }

    @Override
    public Ledger ledger(LedgerForm form) {
        return new VolatileLedger(form, this);
    }

    @Override
    public List<LedgerEntry> reversals(LedgerForm form, String entryId) {
        return read(() -> List.copyOf(content.reversals(form.name(), entryId)));
    }

    @Override
    public void commit(Batch batch) {
        read(() -> true);
        content.apply(batch);
    }

    @Override
    public void backup(Path target, Progress progress) {
        read(() -> VolatileFile.write(content, target));
        VolatileFile.read(target);
        progress.at("Copied", 1);
    }

    @Override
    public Optional<String> integrity() {
        return read(Optional::empty);
    }

    @Override
    public void close() {
        closed = true;
        onClose.run();
    }

    <T> T entries(String ledger, Function<Map<String, LedgerEntry>, T> reading) {
        return read(() -> reading.apply(content.ledgers().getOrDefault(ledger, Map.of())));
    }

    private <T> T read(Supplier<T> reading) {
        if (closed) {
            throw new BookException(Reason.OTHER, "The book " + location + " is closed; open it again.");
        }
        return content.read(reading);
    }
}
