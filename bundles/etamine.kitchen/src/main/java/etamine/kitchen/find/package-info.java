/**
 * Finding things across all modules.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.find;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
