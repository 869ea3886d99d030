/** Papers and tables of all that costing knows, laid out from its records alone. */
@NullMarked
package etamine.costing.internal.paper;

import org.jspecify.annotations.NullMarked;
