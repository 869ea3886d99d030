/** Pars, expected use and orders in the book, the plan's figures gathered and its results shown. */
@NullMarked
package etamine.ordering.internal;

import org.jspecify.annotations.NullMarked;
