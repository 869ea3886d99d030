/**
 * The diary of service: how many come, what they choose, what was sold.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.covers;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
