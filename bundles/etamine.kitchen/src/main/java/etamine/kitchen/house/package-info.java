/**
 * The house itself: its name, currency, time zone, way of measuring, and what day it is there.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.house;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
