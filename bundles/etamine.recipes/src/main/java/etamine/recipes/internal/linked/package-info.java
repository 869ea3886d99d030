/** Recipes of other programs as JSON-LD with the terms of schema.org, in and out. */
@NullMarked
package etamine.recipes.internal.linked;

import org.jspecify.annotations.NullMarked;
