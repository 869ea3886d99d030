/** Tries and weighed tests of recipes. */
@NullMarked
package etamine.recipes.internal.trial;

import org.jspecify.annotations.NullMarked;
