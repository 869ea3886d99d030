/**
 * Costing: the rules costs are reckoned by, what has changed since a day and why, trying changes out before they are
 * written, what to charge, how the menu earns, and what was sold against what it took. Nothing here changes the book until
 * it is told to.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.costing;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
