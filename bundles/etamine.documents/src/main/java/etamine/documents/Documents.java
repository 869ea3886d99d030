package etamine.documents;

import etamine.base.Printout;
import java.io.IOException;
import java.nio.file.Path;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Writes papers to files. A file is complete or absent: it is written beside its place first and then moved there,
 * replacing what was there. The same paper always gives the same bytes, except for XLSX, which carries its hour.
 * Characters that no installed font has are shown as boxes, and the last page says so. Thread-safe.
 */
@ProviderType
public interface Documents {

    /** Writes a PDF with embedded fonts. */
    void pdf(Paper paper, Path file) throws IOException;

    /** Writes one self-contained HTML page. */
    void html(Paper paper, Path file) throws IOException;

    /**
     * Writes a grid as CSV by RFC 4180: UTF-8, comma, CRLF, headings first, without the totals. Cells that a spreadsheet
     * would take for a formula (beginning with = + - @, tab or carriage return, unless they are plain numbers) get an
     * apostrophe in front.
     */
    void csv(Block.Grid grid, Path file) throws IOException;

    /** Writes a sheet as CSV by the same rules; numbers in plain digits with a point, days as ISO 8601. */
    void csv(Workbook.Sheet sheet, Path file) throws IOException;

    /** Writes a workbook as Office Open XML (ECMA-376), the form with the ending {@code .xlsx}. */
    void xlsx(Workbook workbook, Path file) throws IOException;

    /** A paper that can be saved and printed by somebody who does not know papers. */
    Printout printout(Paper paper);
}
