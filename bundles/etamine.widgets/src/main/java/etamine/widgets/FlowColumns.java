package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/** Cells in two columns, or one when there is no room for two; two halves make a cell; wide cells take a row. */
final class FlowColumns extends Layout {
    static final Integer ONE = 1;
    static final Integer WIDE = 2;
    /** Half a column. */
    static final Integer HALF = 0;

    private static final int MARGIN = 12;
    private static final int GAP = 20;
    private static final int HALF_GAP = 10;
    private static final int ROW_GAP = 9;
    private static final int LEAST = 230;
    private static final int MOST = 460;

    @Override
    protected Point computeSize(Composite composite, int wHint, int hHint, boolean flushCache) {
        int width = wHint == SWT.DEFAULT ? LEAST * 2 + GAP + MARGIN * 2 : wHint;
        return new Point(width, place(composite, width, false));
    }

    @Override
    protected void layout(Composite composite, boolean flushCache) {
        Rectangle area = composite.getClientArea();
        place(composite, area.width, true);
    }

    private static int place(Composite composite, int width, boolean move) {
        int room = Math.max(60, width - MARGIN * 2);
        int columns = room >= LEAST * 2 + GAP ? 2 : 1;
        int cell = Math.min(MOST, (room - GAP * (columns - 1)) / columns);
        Cursor cursor = new Cursor(columns, cell, Math.min(room, cell * columns + GAP * (columns - 1)), move);
        for (Control child : composite.getChildren()) {
            if (child.getVisible()) {
                cursor.put(child);
            }
        }
        cursor.endRow();
        return cursor.y - ROW_GAP + MARGIN;
    }

    private static final class Cursor {
        private final int columns;
        private final int cell;
        private final int whole;
        private final boolean move;
        private int halves;
        private int rowHeight;
        private int y = MARGIN;

        Cursor(int columns, int cell, int whole, boolean move) {
            this.columns = columns;
            this.cell = cell;
            this.whole = whole;
            this.move = move;
        }

        void put(Control child) {
            boolean wide = WIDE.equals(child.getLayoutData());
            boolean small = HALF.equals(child.getLayoutData());
            int taken = small ? 1 : 2;
            halves += small ? 0 : halves % 2;
            if (wide || halves + taken > columns * 2) {
                endRow();
            }
            int half = (cell - HALF_GAP) / 2;
            int width = wide ? whole : small ? half : cell;
            int height = child.computeSize(width, SWT.DEFAULT).y;
            if (move) {
                int x = halves / 2 * (cell + GAP) + halves % 2 * (half + HALF_GAP);
                child.setBounds(MARGIN + x, y, width, height);
            }
            rowHeight = Math.max(rowHeight, height);
            halves += taken;
            if (wide) {
                endRow();
            }
        }

        void endRow() {
            if (halves > 0) {
                y += rowHeight + ROW_GAP;
            }
            halves = 0;
            rowHeight = 0;
        }
    }
}
