package etamine.shell.app.internal;

import org.eclipse.swt.graphics.Rectangle;

/** Where a page's picture lands on the paper in the printer. */
final class PageFit {
    private PageFit() {}

    /**
     * The place of one strip. The page is fitted into the paper with its proportions kept and in the middle; strips meet
     * without a gap, since each begins where the rounding of the one above ends.
     *
     * @param paper all of the sheet
     * @param columns how wide the page's picture is
     * @param rows how tall the page's picture is
     * @param top where the strip begins in it
     * @param height how tall the strip is
     */
    static Rectangle strip(Rectangle paper, int columns, int rows, int top, int height) {
        long across = Math.min(paper.width, (long) paper.height * columns / rows);
        long down = Math.min(paper.height, (long) paper.width * rows / columns);
        int left = paper.x + (int) (paper.width - across) / 2;
        int above = paper.y + (int) (paper.height - down) / 2;
        int from = (int) (down * top / rows);
        int to = (int) (down * (top + height) / rows);
        return new Rectangle(left, above + from, (int) across, to - from);
    }
}
