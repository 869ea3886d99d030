/**
 * Papers: a neutral page of headings, facts, grids and pictures made of shapes, written as PDF, HTML, CSV or XLSX.
 * Whoever fills a paper does the arithmetic and the formatting of figures; here is only layout.
 */
@Export
@Version("1.1.0")
@NullMarked
package etamine.documents;

import org.jspecify.annotations.NullMarked;
import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
