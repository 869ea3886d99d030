/** What a batch weighs: line by line, as measured by tests, and against what it makes. */
@NullMarked
package etamine.recipes.internal.weight;

import org.jspecify.annotations.NullMarked;
