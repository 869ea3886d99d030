/**
 * Loading and dumping the exchange form: files in, sections checked together, one transaction; and back.
 */
@NullMarked
package etamine.book.internal.exchange;

import org.jspecify.annotations.NullMarked;
