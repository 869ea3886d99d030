/** Recipes found by name, by what is in them and by their steps. */
@NullMarked
package etamine.recipes.internal.find;

import org.jspecify.annotations.NullMarked;
