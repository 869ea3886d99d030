/**
 * Recipes: writing them, keeping their graph free of loops, scaling them exactly. Every change is checked, saved as a
 * revision and can be undone.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.recipes;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
