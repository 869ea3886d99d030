package etamine.documents;

import java.util.List;

/**
 * A page to be laid out.
 *
 * @param title the large heading on the first page and the document's title
 * @param subtitle a line under it; empty for none
 * @param blocks what follows, top to bottom
 * @param footer small text at the foot of every page, before the page number; empty for none
 * @param size the sheet
 */
public record Paper(String title, String subtitle, List<Block> blocks, String footer, Size size) {

    /** Sheets, portrait. */
    public enum Size {
        /** ISO 216 A4, 210 x 297 mm. */
        A4,
        /** US Letter, 8.5 x 11 in. */
        LETTER
    }

    /** Copies the list. */
    public Paper {
        blocks = List.copyOf(blocks);
    }
}
