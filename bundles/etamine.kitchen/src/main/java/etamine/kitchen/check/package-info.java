/**
 * Consistency of the whole book, checked by every module for its own part.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.check;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
