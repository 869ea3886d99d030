/** The shelf of recipes, their graph, and what they make as items, with the facts that flow through. */
@NullMarked
package etamine.recipes.internal;

import org.jspecify.annotations.NullMarked;
