/**
 * What benches are made of: entry fields that read kitchen measures, native tables that stay fast, forms, dialogs,
 * small charts, and the one palette and icon set they share. Every widget is used on the display's thread, is reachable
 * by keyboard and describes itself to screen readers.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.widgets;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
