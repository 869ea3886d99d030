/** The modules station: what is installed, whether it runs, and why not. */
@NullMarked
package etamine.modules.ui.internal;

import org.jspecify.annotations.NullMarked;
