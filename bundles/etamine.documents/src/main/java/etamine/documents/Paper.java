package etamine.documents;

import java.util.List;

/**
 * A page to be laid out.
 *
 * @param title the large heading on the first page and the document's title
 * @param subtitle a line under it; empty for none
 * @param blocks what follows, top to bottom
 * @param footer small text at the foot of every page, before the page number; empty for none
 * @param sheet the sheet and how it is used
 */
public record Paper(String title, String subtitle, List<Block> blocks, String footer, Sheet sheet) {

    /** Sizes of sheets. */
    public enum Size {
        /** ISO 216 A4, 210 x 297 mm. */
        A4,
        /** US Letter, 8.5 x 11 in. */
        LETTER
    }

    /** Sizes of type. */
    public enum Print {
        /** To be read in the hand. */
        NORMAL,
        /** To be read on a wall from an arm's length or two: body text of 16 points. */
        LARGE
    }

    /**
     * A sheet and how it is used.
     *
     * @param size its size
     * @param landscape whether its long side lies across
     * @param print the size of type on it
     */
    public record Sheet(Size size, boolean landscape, Print print) {

        /** An upright sheet with type of normal size. */
        public static Sheet of(Size size) {
            return new Sheet(size, false, Print.NORMAL);
        }

        /** The same sheet lying on its long side. */
        public Sheet across() {
            return new Sheet(size, true, print);
        }

        /** The same sheet with type of that size. */
        public Sheet in(Print other) {
            return new Sheet(size, landscape, other);
        }
    }

    /** Copies the list. */
    public Paper {
        blocks = List.copyOf(blocks);
    }

    /** A paper on an upright sheet with type of normal size. */
    public Paper(String title, String subtitle, List<Block> blocks, String footer, Size size) {
        this(title, subtitle, blocks, footer, Sheet.of(size));
    }

    /** The size of its sheet. */
    public Size size() {
        return sheet.size();
    }
}
