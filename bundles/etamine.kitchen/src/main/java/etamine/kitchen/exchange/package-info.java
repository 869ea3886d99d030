/**
 * The exchange form: each section of a file belongs to one module.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.exchange;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
