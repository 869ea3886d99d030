/** The ingredients station: the list, and everything that is known of one ingredient. */
@NullMarked
package etamine.ingredients.ui.internal;

import org.jspecify.annotations.NullMarked;
