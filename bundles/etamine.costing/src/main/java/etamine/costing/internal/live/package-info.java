/** The costs of the open book as it is now: reckoned when something has moved, reported, explained and called out. */
@NullMarked
package etamine.costing.internal.live;

import org.jspecify.annotations.NullMarked;
