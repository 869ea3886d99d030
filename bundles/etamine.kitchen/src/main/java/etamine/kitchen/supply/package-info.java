/**
 * Suppliers, what they offer, and when they deliver.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.supply;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
