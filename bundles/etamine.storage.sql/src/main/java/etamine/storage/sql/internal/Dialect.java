package etamine.storage.sql.internal;

import etamine.storage.BookException;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;

/** Everything in which one database's SQL differs from another's. */
interface Dialect {

    /** The column type of text that sorts by code point. */
    String text();

    /** The column type of a 64-bit whole number. */
    String whole();

    /** The column type of a primary key that numbers rows in the order of writing. */
    String counter();

    /** Begins a transaction that will write. */
    String begin();

    /** The columns of a table; empty if there is no such table. */
    Set<String> columns(Session session, String table) throws SQLException;

    /** What the database finds damaged in itself; empty when sound. */
    Optional<String> integrity(Session session) throws SQLException;

    /** The failure as the person at the screen should hear it. */
    BookException problem(SQLException cause, String location);
}
