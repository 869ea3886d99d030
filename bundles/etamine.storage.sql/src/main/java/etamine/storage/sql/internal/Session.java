package etamine.storage.sql.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One connection with the statements it prepared last. Used by one thread at a time. */
final class Session implements AutoCloseable {
    private static final int KEPT = 40;

    private final Connection connection;
    private final Map<String, PreparedStatement> statements = new LinkedHashMap<>(KEPT, 0.75f, true);

    /**
     * Reads one row of a result.
     *
     * @param <T> what it makes of the row
     */
    @FunctionalInterface
    interface Row<T> {
        T read(ResultSet row) throws SQLException;
    }

    Session(Connection connection) {
        this.connection = connection;
    }

    Connection connection() {
        return connection;
    }

    <T> List<T> list(String sql, Row<T> row, Object... values) throws SQLException {
        List<T> rows = new ArrayList<>();
        try (ResultSet result = filled(sql, values).executeQuery()) {
            while (result.next()) {
                rows.add(row.read(result));
            }
        }
        return rows;
    }

    <T> Optional<T> first(String sql, Row<T> row, Object... values) throws SQLException {
        return list(sql, row, values).stream().findFirst();
    }

    void run(String sql, Object... values) throws SQLException {
        filled(sql, values).execute();
    }

    private PreparedStatement filled(String sql, Object... values) throws SQLException {
        PreparedStatement statement = statement(sql);
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        return statement;
    }

    private PreparedStatement statement(String sql) throws SQLException {
        PreparedStatement known = statements.get(sql);
        if (known != null) {
            return known;
        }
        PreparedStatement made = connection.prepareStatement(sql);
        statements.put(sql, made);
        if (statements.size() > KEPT) {
            statements.remove(statements.keySet().iterator().next()).close();
        }
        return made;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
