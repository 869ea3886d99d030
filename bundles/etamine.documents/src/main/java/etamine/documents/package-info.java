/**
 * Papers: a neutral page of headings, facts and grids, written as PDF, HTML or CSV. Whoever fills a paper does the
 * arithmetic and the formatting of figures; here is only layout.
 */
@Export
@Version("1.0.0")
@NullMarked
package etamine.documents;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
