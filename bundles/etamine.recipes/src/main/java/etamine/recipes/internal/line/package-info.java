/** Typed lines of recipes read into amounts and items. */
@NullMarked
package etamine.recipes.internal.line;

import org.jspecify.annotations.NullMarked;
