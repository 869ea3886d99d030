/** How the book of suppliers is kept. */
@NullMarked
package etamine.catalogue.internal;

import org.jspecify.annotations.NullMarked;
