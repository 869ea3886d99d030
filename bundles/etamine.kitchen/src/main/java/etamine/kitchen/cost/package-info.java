/**
 * Costs of everything that is bought or made.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.cost;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
