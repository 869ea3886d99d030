/**
 * Places a flow for drawing, alike for the window and for paper. Lengths are whole steps of whatever the drawing uses,
 * such as pixels or tenths of a point.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.base.flow;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
