/** The recipes as documents of the book, their graph, scaling, section, verbs, finder and checks. */
@NullMarked
package etamine.recipes.internal;

import org.jspecify.annotations.NullMarked;
