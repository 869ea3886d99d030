package etamine.storage.sql.internal;

import etamine.storage.Ledger;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.Selection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A ledger in a table of its own. A book that may only be read can lack the table or some of its columns; what is
 * missing is read as empty.
 */
final class SqlLedger implements Ledger {
    private final LedgerForm form;
    private final Connections connections;
    private final LedgerColumns columns;
    private final Set<String> present;

    SqlLedger(LedgerForm form, Connections connections, Set<String> present) {
        this.form = form;
        this.connections = connections;
        this.columns = new LedgerColumns(form);
        this.present = present;
    }

    @Override
    public LedgerForm form() {
        return form;
    }

    @Override
    public Optional<LedgerEntry> entry(String id) {
        return select(" where id = ?", List.of(id)).stream().findFirst();
    }

    @Override
    public List<LedgerEntry> entries(Selection selection) {
        List<Object> values = new ArrayList<>();
        return select(where(selection, values) + " order by at, seq", values);
    }

    List<LedgerEntry> reversals(String id) {
        return select(" where reverses = ? order by seq", List.of(id));
    }

    @Override
    public List<Sum> sums(Selection selection, List<String> by) {
        List<Object> values = new ArrayList<>();
        String where = where(selection, values);
        List<String> keys = by.stream().map(this::key).toList();
        String group = keys.isEmpty() ? "" : " group by " + String.join(", ", keys);
        String order = keys.isEmpty() ? "" : " order by " + String.join(", ", keys);
        List<String> read = new ArrayList<>(keys);
        form.measures().forEach(name -> read.add("sum(" + measure(name) + ")"));
        read.add("count(*)");
        String sql = "select " + String.join(", ", read) + from() + where + group + having() + order;
        return present.isEmpty()
                ? List.of()
                : connections.read(session -> session.list(sql, row -> sum(row, by), values.toArray()));
    }

    /** Leaves out groups in which every sum is zero; also the one of no entries, whose sums are null. */
    private String having() {
        return form.measures().isEmpty()
                ? " having count(*) > 0"
                : " having "
                        + form.measures().stream()
                                .map(name -> "sum(" + measure(name) + ") <> 0")
                                .collect(Collectors.joining(" or "));
    }

    private Sum sum(ResultSet row, List<String> by) throws SQLException {
        Map<String, String> keys = new LinkedHashMap<>();
        int column = 1;
        for (String name : by) {
            keys.put(name, row.getString(column++));
        }
        Map<String, Long> measures = new LinkedHashMap<>();
        for (String name : form.measures()) {
            measures.put(name, row.getLong(column++));
        }
        return new Sum(keys, measures, row.getLong(column));
    }

    private List<LedgerEntry> select(String rest, List<Object> values) {
        List<String> read = new ArrayList<>(List.of("id", "at", "detail", "reverses"));
        form.keys().forEach(name -> read.add(key(name)));
        form.measures().forEach(name -> read.add(measure(name)));
        String sql = "select " + String.join(", ", read) + from() + rest;
        return present.isEmpty()
                ? List.of()
                : connections.read(session -> session.list(sql, this::entry, values.toArray()));
    }

    private LedgerEntry entry(ResultSet row) throws SQLException {
        int column = 5;
        Map<String, String> keys = new LinkedHashMap<>();
        for (String name : form.keys()) {
            keys.put(name, row.getString(column++));
        }
        Map<String, Long> measures = new LinkedHashMap<>();
        for (String name : form.measures()) {
            measures.put(name, row.getLong(column++));
        }
        return new LedgerEntry(
                row.getString(1),
                Moments.toInstant(row.getLong(2)),
                keys,
                measures,
                row.getString(3),
                Optional.ofNullable(row.getString(4)));
    }

    private String where(Selection selection, List<Object> values) {
        List<String> conditions = new ArrayList<>();
        selection.equal().forEach((name, value) -> {
            conditions.add(key(name) + " = ?");
            values.add(value);
        });
        selection.from().ifPresent(instant -> {
            conditions.add("at >= ?");
            values.add(Moments.toNumber(instant));
        });
        selection.until().ifPresent(instant -> {
            conditions.add("at < ?");
            values.add(Moments.toNumber(instant));
        });
        return conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions);
    }

    private String from() {
        return " from " + columns.table();
    }

    private String key(String name) {
        if (!form.keys().contains(name)) {
            throw new IllegalArgumentException("The " + form.name() + " ledger has no key " + name);
        }
        return present.contains(LedgerColumns.key(name)) ? LedgerColumns.key(name) : "''";
    }

    private String measure(String name) {
        return present.contains(LedgerColumns.measure(name)) ? LedgerColumns.measure(name) : "0";
    }

    static void write(Session session, String ledger, LedgerEntry entry, long written) throws SQLException {
        List<String> names = new ArrayList<>(List.of("id", "at", "detail", "written"));
        List<Object> values =
                new ArrayList<>(List.of(entry.id(), Moments.toNumber(entry.at()), entry.detail(), written));
        new TreeMap<>(entry.keys()).forEach((name, value) -> {
            names.add(LedgerColumns.key(name));
            values.add(value);
        });
        new TreeMap<>(entry.measures()).forEach((name, value) -> {
            names.add(LedgerColumns.measure(name));
            values.add(value);
        });
        entry.reverses().ifPresent(id -> {
            names.add("reverses");
            values.add(id);
        });
        session.run(
                "insert into " + LedgerColumns.table(ledger) + " (" + String.join(", ", names) + ") values (?"
                        + ", ?".repeat(names.size() - 1) + ")",
                values.toArray());
    }
}
