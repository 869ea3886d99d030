/**
 * What can be done from the console with the book as a whole.
 */
@NullMarked
package etamine.book.internal.verb;

import org.jspecify.annotations.NullMarked;
