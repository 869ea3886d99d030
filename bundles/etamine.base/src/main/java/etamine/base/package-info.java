/**
 * Words every bundle may use: problems, explanations and progress. They are plain values without any dependency.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.base;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
