/** The costing station: what every plate and recipe costs, and what that is made of. */
@NullMarked
package etamine.costing.ui.internal;

import org.jspecify.annotations.NullMarked;
