/**
 * The ingredient list: what can lie on a shelf, with its measures, preparations and yields, allergens and keeping time.
 * Every change is checked, saved as a revision and can be undone.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.ingredients;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
