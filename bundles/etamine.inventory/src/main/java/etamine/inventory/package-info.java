/**
 * The stockroom: what comes in, goes out and is counted, written to a ledger that only grows. What a call wrote is in
 * the book when it returns and can be undone as one step; a mistake is corrected by a reversal.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.inventory;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
