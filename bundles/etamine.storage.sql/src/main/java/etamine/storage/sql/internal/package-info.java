/** The book in one SQLite file. What differs between databases is in {@code SqliteDialect} and {@code SqliteFile}. */
@NullMarked
package etamine.storage.sql.internal;

import org.jspecify.annotations.NullMarked;
