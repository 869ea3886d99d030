/**
 * The command line: finds the verbs of the installed modules, reads the call, opens the book and prints the report.
 */
@NullMarked
package etamine.console.internal;

import org.jspecify.annotations.NullMarked;
