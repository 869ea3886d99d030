/** Reads and steers the bundles of the running framework. */
@NullMarked
package etamine.modules.internal;

import org.jspecify.annotations.NullMarked;
