/** Recipes scaled exactly, as a kitchen would measure them, to vessels and to what is on hand. */
@NullMarked
package etamine.recipes.internal.scale;

import org.jspecify.annotations.NullMarked;
