/** The ingredient list as documents of the book, its section, verb, finder and checks. */
@NullMarked
package etamine.ingredients.internal;

import org.jspecify.annotations.NullMarked;
