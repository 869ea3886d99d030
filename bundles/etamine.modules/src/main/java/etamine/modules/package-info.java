/**
 * The modules of this program: what is installed, whether it runs, what it needs, and starting and stopping it.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.modules;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
