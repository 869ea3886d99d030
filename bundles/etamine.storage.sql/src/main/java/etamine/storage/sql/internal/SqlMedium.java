package etamine.storage.sql.internal;

import etamine.base.Progress;
import etamine.storage.Commit;
import etamine.storage.Document;
import etamine.storage.Ledger;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.medium.Batch;
import etamine.storage.medium.Medium;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A medium of database tables. */
final class SqlMedium implements Medium {
    private final Place place;
    private final Connections connections;
    private final Dialect dialect;
    private final Schema schema;
    private final Map<LedgerForm, SqlLedger> ledgers = new ConcurrentHashMap<>();
    private volatile long revision;

    /** What depends on where the tables are. */
    interface Place {
        String location();

        Optional<String> readOnly();

        void backup(Connections connections, Path target, Progress progress);

        /** Lets go of it, after the connections were closed. */
        void leave();
    }

    SqlMedium(Place place, Connections connections, Dialect dialect) {
        this.place = place;
        this.connections = connections;
        this.dialect = dialect;
        this.schema = new Schema(dialect);
        this.revision = connections
                .read(session -> session.first("select max(revision) from commits", row -> row.getLong(1)))
                .orElse(0L);
    }

    Connections connections() {
        return connections;
    }

    @Override
    public String location() {
        return place.location();
    }

    @Override
    public Optional<String> readOnly() {
        return place.readOnly();
    }

    @Override
    public long revision() {
        return revision;
    }

    @Override
    public Optional<Document> latest(String shelf, String id) {
        return connections.read(session -> SqlDocuments.latest(session, shelf, id));
    }

    @Override
    public List<Document> present(String shelf) {
        return connections.read(session -> SqlDocuments.present(session, shelf));
    }

    @Override
    public List<String> presentIds(String shelf) {
        return connections.read(session -> SqlDocuments.presentIds(session, shelf));
    }

    @Override
    public List<Document> revisions(String shelf, String id) {
        return connections.read(session -> SqlDocuments.revisions(session, shelf, id));
    }

    @Override
    public List<Document> asOf(String shelf, Instant at) {
        return connections.read(session -> SqlDocuments.asOf(session, shelf, at));
    }

    @Override
    public List<Document> firsts(String shelf) {
        return connections.read(session -> SqlDocuments.firsts(session, shelf));
    }

    @Override
    public int moduleFormat(String module) {
        return connections
                .read(session ->
                        session.first("select format from modules where module = ?", row -> row.getInt(1), module))
                .orElse(0);
    }

    @Override
    public boolean holds(ModuleFormat format) {
        return moduleFormat(format.module()) == format.version()
                && format.ledgers().stream()
                        .allMatch(form -> present(form).containsAll(new LedgerColumns(form).all())
                                && !present(form).isEmpty());
    }

    private Set<String> present(LedgerForm form) {
        String table = new LedgerColumns(form).table();
        return connections.read(session -> dialect.columns(session, table));
    }

    @Override
    public Ledger ledger(LedgerForm form) {
        return table(form);
    }

    private SqlLedger table(LedgerForm form) {
        return ledgers.computeIfAbsent(form, known -> new SqlLedger(known, connections, present(known)));
    }

    @Override
    public List<LedgerEntry> reversals(LedgerForm form, String entryId) {
        return table(form).reversals(entryId);
    }

    @Override
    public void commit(Batch batch) {
        connections.write(session -> {
            if (batch.format().isPresent()) {
                record(session, batch.format().get());
            }
            if (batch.commit().isPresent()) {
                write(session, batch.commit().get());
            }
            return null;
        });
        batch.commit().ifPresent(commit -> revision = commit.revision());
        batch.format().ifPresent(format -> ledgers.clear());
    }

    private void record(Session session, ModuleFormat format) throws SQLException {
        session.run(
                "insert into modules (module, format) values (?, ?)"
                        + " on conflict (module) do update set format = excluded.format",
                format.module(),
                format.version());
        for (LedgerForm form : format.ledgers()) {
            schema.shape(session, form);
        }
    }

    private void write(Session session, Commit commit) throws SQLException {
        session.run(
                "insert into commits (revision, at, label) values (?, ?, ?)",
                commit.revision(),
                Moments.toNumber(commit.at()),
                commit.label());
        for (Commit.DocumentChange change : commit.documents()) {
            SqlDocuments.write(session, change, commit.revision());
        }
        for (Commit.Posting posting : commit.entries()) {
            SqlLedger.write(session, posting.ledger(), posting.entry(), commit.revision());
        }
    }

    @Override
    public void backup(Path target, Progress progress) {
        place.backup(connections, target, progress);
    }

    @Override
    public Optional<String> integrity() {
        return connections.read(dialect::integrity);
    }

    @Override
    public void close() {
        connections.close();
        place.leave();
    }
}
