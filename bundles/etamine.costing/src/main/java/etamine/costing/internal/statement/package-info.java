/** Food cost as the stock had it beside what the sales should have used, for days and week by week. */
@NullMarked
package etamine.costing.internal.statement;

import org.jspecify.annotations.NullMarked;
