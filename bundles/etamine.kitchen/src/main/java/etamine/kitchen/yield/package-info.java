/**
 * Yields that were measured: what several tests of one thing say together.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.yield;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
