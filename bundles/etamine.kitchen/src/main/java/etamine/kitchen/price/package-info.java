/**
 * Prices of items, from whoever knows one.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.price;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
