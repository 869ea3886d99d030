/** The orders station: drafts and orders with their reasons, what is left short, and the pars. */
@NullMarked
package etamine.ordering.ui.internal;

import org.jspecify.annotations.NullMarked;
