/**
 * The book of suppliers: who they are, what they offer, and when an order must be with them. What is saved is in the
 * book when the call returns, keeps members that a newer program wrote, and can be undone.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.catalogue;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
