/**
 * Recipes: processes that use some things and make others, and the graph they form.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.recipe;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
