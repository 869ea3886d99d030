/** The stock station. */
@NullMarked
package etamine.inventory.ui.internal;

import org.jspecify.annotations.NullMarked;
