/** The recipes station: the list, one recipe to write and to scale, and what it comes to. */
@NullMarked
package etamine.recipes.ui.internal;

import org.jspecify.annotations.NullMarked;
