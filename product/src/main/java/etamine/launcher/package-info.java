/**
 * Starts the bundles of the chosen features on the Felix framework and hands the main thread to the window or the
 * console. It stands on the plain class path, so only {@code java.*} types cross between it and the bundles.
 */
@NullMarked
package etamine.launcher;

import org.jspecify.annotations.NullMarked;
