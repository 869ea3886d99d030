@NullMarked
package etamine.modules.internal;

import org.jspecify.annotations.NullMarked;
