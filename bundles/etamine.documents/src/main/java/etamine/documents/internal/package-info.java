/** Layout of papers on PDFBox, and the plain-text forms. */
@NullMarked
package etamine.documents.internal;

import org.jspecify.annotations.NullMarked;
