/**
 * Orders to suppliers and their life.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.order;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
