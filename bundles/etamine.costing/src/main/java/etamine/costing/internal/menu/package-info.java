/** What sells and what it earns, sorted into the classes of menu engineering. */
@NullMarked
package etamine.costing.internal.menu;

import org.jspecify.annotations.NullMarked;
