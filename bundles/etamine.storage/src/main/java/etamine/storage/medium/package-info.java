/**
 * For those who bring a new place to keep books: implement {@link etamine.storage.medium.Medium} and
 * {@link etamine.storage.medium.MediumBook} makes a whole book of it, with transactions, undo, migrations and listeners
 * that behave the same on every medium. Modules never need this package.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.storage.medium;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
