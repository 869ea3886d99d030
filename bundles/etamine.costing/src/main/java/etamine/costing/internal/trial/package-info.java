/** What-if: figures under other prices and yields, without writing anything. */
@NullMarked
package etamine.costing.internal.trial;

import org.jspecify.annotations.NullMarked;
