/** One consistent reckoning of the whole book: the engine with prices and rules, and the plates read from it. */
@NullMarked
package etamine.costing.internal.state;

import org.jspecify.annotations.NullMarked;
