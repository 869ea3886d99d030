/** What tests stand on: a book that lives in memory and keeps the whole contract of the real one, and set clocks. */
@Export
@Version("1.0.0")
@NullMarked
package etamine.testing;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
