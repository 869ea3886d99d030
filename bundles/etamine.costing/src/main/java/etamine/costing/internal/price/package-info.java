/** What to ask for a plate: prices that reach a target, rounded as menus are. */
@NullMarked
package etamine.costing.internal.price;

import org.jspecify.annotations.NullMarked;
