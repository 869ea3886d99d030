/** The cost engine: the recipe graph compiled to arrays, and the reports read from it. */
@NullMarked
package etamine.costing.internal;

import org.jspecify.annotations.NullMarked;
