/** How the stock ledger is kept, summed and valued. */
@NullMarked
package etamine.inventory.internal;

import org.jspecify.annotations.NullMarked;
