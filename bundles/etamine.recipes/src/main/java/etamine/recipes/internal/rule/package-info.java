/** What a recipe must be, what it must be able to reckon with, and what makes it doubtful. */
@NullMarked
package etamine.recipes.internal.rule;

import org.jspecify.annotations.NullMarked;
