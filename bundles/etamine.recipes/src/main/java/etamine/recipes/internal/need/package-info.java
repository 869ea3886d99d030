/** What has to be bought and made for a demand, followed down the graph. */
@NullMarked
package etamine.recipes.internal.need;

import org.jspecify.annotations.NullMarked;
