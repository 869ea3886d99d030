/** Recipes as lines of text, and the verbs that list, show and change them one by one. */
@NullMarked
package etamine.recipes.internal.text;

import org.jspecify.annotations.NullMarked;
