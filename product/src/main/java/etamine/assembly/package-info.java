/**
 * Build time only: turns the feature files into the flat lists that the launcher reads, and lays the program folder
 * out. Not part of the launcher's jar.
 */
@NullMarked
package etamine.assembly;

import org.jspecify.annotations.NullMarked;
