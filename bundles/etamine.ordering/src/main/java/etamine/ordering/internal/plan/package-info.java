/**
 * The ordering problem in whole base units and day numbers, the methods that solve it and the one simulation that
 * judges every solution.
 */
@NullMarked
package etamine.ordering.internal.plan;

import org.jspecify.annotations.NullMarked;
