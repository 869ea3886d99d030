/** How amounts, ids and calls are written and read on the console. */
@NullMarked
package etamine.costing.internal.words;

import org.jspecify.annotations.NullMarked;
