/**
 * The book: one kitchen's data. Shelves hold revisioned JSON documents, ledgers hold append-only entries, one
 * {@link etamine.storage.Book#write transaction} at a time changes them, and every transaction can be undone.
 *
 * <p>What is promised: after {@code write} returns, the change survives a crash; nothing is ever overwritten in place.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.storage;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
