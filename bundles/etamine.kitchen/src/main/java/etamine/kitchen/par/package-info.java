/**
 * Pars: what should be on the shelf when service starts.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.par;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
