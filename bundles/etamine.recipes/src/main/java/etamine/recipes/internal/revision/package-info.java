/** What a recipe was before, and how it differs from what it is. */
@NullMarked
package etamine.recipes.internal.revision;

import org.jspecify.annotations.NullMarked;
