@NullMarked
package etamine.recipes.internal;

import org.jspecify.annotations.NullMarked;
