/** Cards of recipes for paper. */
@NullMarked
package etamine.recipes.internal.card;

import org.jspecify.annotations.NullMarked;
