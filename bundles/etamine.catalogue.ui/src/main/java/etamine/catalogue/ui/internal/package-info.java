/** The suppliers station. */
@NullMarked
package etamine.catalogue.ui.internal;

import org.jspecify.annotations.NullMarked;
