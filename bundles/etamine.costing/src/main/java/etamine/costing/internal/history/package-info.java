/** Why costs moved: the book as it stood then and as it stands now, and what each change did to each plate. */
@NullMarked
package etamine.costing.internal.history;

import org.jspecify.annotations.NullMarked;
