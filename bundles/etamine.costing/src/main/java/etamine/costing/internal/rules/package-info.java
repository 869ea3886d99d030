/** The kitchen's rules of costing: kept on a shelf, changed, exchanged, and asked for on the console. */
@NullMarked
package etamine.costing.internal.rules;

import org.jspecify.annotations.NullMarked;
