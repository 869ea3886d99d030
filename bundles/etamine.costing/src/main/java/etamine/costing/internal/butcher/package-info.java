/** Butchery and cooking tests as sheets of weights and costs. */
@NullMarked
package etamine.costing.internal.butcher;

import org.jspecify.annotations.NullMarked;
