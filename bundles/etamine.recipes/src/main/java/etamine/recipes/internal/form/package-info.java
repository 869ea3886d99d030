/** A recipe and its entry in the exchange form, read and written. */
@NullMarked
package etamine.recipes.internal.form;

import org.jspecify.annotations.NullMarked;
