/** Recipes as documents of the book: saved, loaded, named elsewhere, replaced. */
@NullMarked
package etamine.recipes.internal.book;

import org.jspecify.annotations.NullMarked;
