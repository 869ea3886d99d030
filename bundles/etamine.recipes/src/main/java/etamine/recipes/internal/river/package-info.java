/** What flows from what was bought to a plate, reckoned, drawn for paper and printed. */
@NullMarked
package etamine.recipes.internal.river;

import org.jspecify.annotations.NullMarked;
