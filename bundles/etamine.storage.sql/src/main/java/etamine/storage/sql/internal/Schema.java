package etamine.storage.sql.internal;

import etamine.storage.LedgerForm;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The tables of a book. Documents are kept as revisions that are never changed; {@code documents} names the latest. */
final class Schema {
    /** The format of the tables, kept by the database beside them. */
    static final int FORMAT = 1;

    static final Set<String> TABLES = Set.of("meta", "modules", "commits", "revisions", "documents");

    private final Dialect dialect;

    Schema(Dialect dialect) {
        this.dialect = dialect;
    }

    void create(Session session) throws SQLException {
        for (String statement : tables()) {
            session.run(statement);
        }
    }

    private List<String> tables() {
        String text = dialect.text() + " not null";
        String whole = dialect.whole() + " not null";
        return List.of(
                "create table meta (name " + text + " primary key, value " + text + ")",
                "create table modules (module " + text + " primary key, format " + whole + ")",
                "create table commits (revision " + whole + " primary key, at " + whole + ", label " + text + ")",
                "create table revisions (shelf " + text + ", id " + text + ", revision " + whole + ", written " + whole
                        + ", json " + text + ", primary key (shelf, id, revision))",
                "create table documents (shelf " + text + ", id " + text + ", revision " + whole
                        + ", primary key (shelf, id))");
    }

    /** Makes the ledger's table, or adds the columns that it lacks. */
    void shape(Session session, LedgerForm form) throws SQLException {
        LedgerColumns columns = new LedgerColumns(form);
        Set<String> present = dialect.columns(session, columns.table());
        List<String> wanted = new ArrayList<>();
        columns.keys().forEach(column -> wanted.add(column + " " + dialect.text() + " not null default ''"));
        columns.measures().forEach(column -> wanted.add(column + " " + dialect.whole() + " not null default 0"));
        if (present.isEmpty()) {
            make(session, columns, wanted);
            return;
        }
        List<String> names = columns.all();
        for (int i = 0; i < names.size(); i++) {
            if (!present.contains(names.get(i))) {
                session.run("alter table " + columns.table() + " add column " + wanted.get(i));
            }
        }
    }

    private void make(Session session, LedgerColumns columns, List<String> wanted) throws SQLException {
        String text = dialect.text() + " not null";
        String whole = dialect.whole() + " not null";
        String table = columns.table();
        session.run("create table " + table + " (seq " + dialect.counter() + ", id " + text + " unique, at " + whole
                + ", detail " + text + ", reverses " + dialect.text() + ", written " + whole
                + (wanted.isEmpty() ? "" : ", " + String.join(", ", wanted)) + ")");
        session.run("create index " + table + "_at on " + table + " (at)");
        session.run("create index " + table + "_reverses on " + table + " (reverses) where reverses is not null");
        if (!columns.keys().isEmpty()) {
            session.run(
                    "create index " + table + "_keys on " + table + " (" + String.join(", ", columns.keys()) + ", at)");
        }
    }
}
