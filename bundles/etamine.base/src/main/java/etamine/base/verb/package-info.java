/**
 * The console-verb contract. A module offers each of its verbs as a {@link etamine.base.verb.Verb} service; the console
 * finds them, parses the call by {@link etamine.base.verb.VerbUsage} and prints the {@link etamine.base.verb.Report}.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.base.verb;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
