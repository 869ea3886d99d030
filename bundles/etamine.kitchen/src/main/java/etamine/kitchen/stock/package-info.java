/**
 * What is on the shelf.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.stock;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
