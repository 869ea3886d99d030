/**
 * The words of allergens, and which of them a list asks to declare. A word that no list knows is kept as it was written;
 * the lists decide nothing for a reader: local rules do.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.kitchen.allergen;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
