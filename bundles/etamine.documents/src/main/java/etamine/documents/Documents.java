package etamine.documents;

import java.io.IOException;
import java.nio.file.Path;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Writes papers to files. A file is complete or absent: it is written beside its place first and then moved there,
 * replacing what was there. The same paper always gives the same bytes. Thread-safe.
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
}
