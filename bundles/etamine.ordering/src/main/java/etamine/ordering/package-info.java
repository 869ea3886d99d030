/**
 * Par-level ordering: the pars a kitchen sets, the plan of what to order from whom for which delivery, with a reason
 * for every line, and the orders made from it. A plan is only a proposal; nothing is ordered before somebody issues
 * it.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.ordering;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
