/**
 * Expected use: how much of each item the coming days will take.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.use;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
