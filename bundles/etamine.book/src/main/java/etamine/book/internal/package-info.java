/**
 * The open book as a service, the house whose book it is, and what else concerns the book as a whole.
 */
@NullMarked
package etamine.book.internal;

import org.jspecify.annotations.NullMarked;
