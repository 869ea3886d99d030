/** Recipes compiled to numbers of their items' reckoning units, and the roll-up over flat arrays: no prices, no services. */
@NullMarked
package etamine.costing.internal.engine;

import org.jspecify.annotations.NullMarked;
