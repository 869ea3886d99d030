package etamine.storage.sql.internal;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** SQLite's own words. */
final class SqliteDialect implements Dialect {
    private static final int PRIMARY_CODE = 0xff;

    @Override
    public String text() {
        return "text";
    }

    @Override
    public String whole() {
        return "integer";
    }

    @Override
    public String counter() {
        return "integer primary key";
    }

    @Override
    public String begin() {
        return "begin immediate";
    }

    @Override
    public Set<String> columns(Session session, String table) throws SQLException {
        return Set.copyOf(session.list("select name from pragma_table_info(?)", row -> row.getString(1), table));
    }

    @Override
    public Optional<String> integrity(Session session) throws SQLException {
        try {
            Optional<String> pages = session.list("pragma integrity_check(20)", row -> row.getString(1)).stream()
                    .filter(line -> !line.equals("ok"))
                    .reduce((one, other) -> one + "; " + other);
            return pages.isPresent() ? pages : references(session);
        } catch (SQLException problem) {
            if (isDamage(code(problem))) {
                return Optional.of(String.valueOf(problem.getMessage()));
            }
            throw problem;
        }
    }

    private static Optional<String> references(Session session) throws SQLException {
        return session.first(
                "select shelf || '/' || id || ' lacks its latest revision' from documents d where not exists"
                        + " (select 1 from revisions r join commits c on c.revision = r.written"
                        + " where r.shelf = d.shelf and r.id = d.id and r.revision = d.revision)",
                row -> row.getString(1));
    }

    @Override
    public BookException problem(SQLException cause, String location) {
        SQLiteErrorCode code = code(cause);
        return switch (code) {
            case SQLITE_FULL, SQLITE_IOERR, SQLITE_CANTOPEN ->
                new BookException(
                        Reason.NO_ROOM,
                        "The disk is full, or " + location + " cannot be reached on it. Nothing was changed; make room"
                                + " and try again.",
                        cause);
            case SQLITE_CORRUPT, SQLITE_NOTADB -> damaged(location, cause);
            case SQLITE_READONLY, SQLITE_PERM ->
                new BookException(
                        Reason.READ_ONLY,
                        location + " may not be written; change its permissions or use a copy.",
                        cause);
            case SQLITE_BUSY, SQLITE_LOCKED ->
                new BookException(
                        Reason.IN_USE,
                        location + " is in use by another program; close that one and try again.",
                        cause);
            default ->
                new BookException(
                        Reason.OTHER, location + " could not do what was asked: " + cause.getMessage(), cause);
        };
    }

    static BookException damaged(String location, SQLException cause) {
        return new BookException(
                Reason.DAMAGED,
                location + " is damaged (" + cause.getMessage() + "). Put it aside and restore the last backup.",
                cause);
    }

    private static boolean isDamage(SQLiteErrorCode code) {
        return code == SQLiteErrorCode.SQLITE_CORRUPT || code == SQLiteErrorCode.SQLITE_NOTADB;
    }

    private static SQLiteErrorCode code(SQLException cause) {
        int full = cause instanceof SQLiteException sqlite ? sqlite.getResultCode().code : cause.getErrorCode();
        return SQLiteErrorCode.getErrorCode(full & PRIMARY_CODE);
    }
}
