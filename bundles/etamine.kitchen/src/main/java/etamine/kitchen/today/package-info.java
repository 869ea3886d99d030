/**
 * What needs somebody now, and what the coming days hold.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.today;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
