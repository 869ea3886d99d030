@NullMarked
package etamine.ingredients.internal;

import org.jspecify.annotations.NullMarked;
