/**
 * The diary of service, to be written in: covers by day, the menu mix, what was sold, and use that the cook expects.
 * Every change is one undoable transaction of the book.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.diary;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
