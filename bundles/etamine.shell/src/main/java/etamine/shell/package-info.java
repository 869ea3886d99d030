/**
 * The contract of the window. A module that wants to be seen offers a {@link etamine.shell.Station} service; the window
 * finds it, opens its bench and tells it what happens. Everything here is called on the window's thread unless it says
 * otherwise.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.shell;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
