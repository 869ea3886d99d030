/** The photos of recipes: taking them in, keeping them in the book and in the exchange form. */
@NullMarked
package etamine.recipes.internal.photo;

import org.jspecify.annotations.NullMarked;
