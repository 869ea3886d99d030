/**
 * Exact quantities and money: units, conversion through equivalences, parsing and formatting. Plain immutable values;
 * nothing here knows a kitchen or a screen.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.measures;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
