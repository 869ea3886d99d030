package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/** Cells in two columns, or one when there is no room for two; wide cells take a row of their own. */
final class FlowColumns extends Layout {
    static final Integer ONE = 1;
    static final Integer WIDE = 2;
    private static final int MARGIN = 12;
    private static final int GAP = 20;
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
            cursor.put(child);
        }
        cursor.endRow();
        return cursor.y - ROW_GAP + MARGIN;
    }

    private static final class Cursor {
        private final int columns;
        private final int cell;
        private final int whole;
        private final boolean move;
        private int column;
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
            if (wide || column == columns) {
                endRow();
            }
            int width = wide ? whole : cell;
            int height = child.computeSize(width, SWT.DEFAULT).y;
            if (move) {
                child.setBounds(MARGIN + column * (cell + GAP), y, width, height);
            }
            rowHeight = Math.max(rowHeight, height);
            column++;
            if (wide) {
                endRow();
            }
        }

        void endRow() {
            if (column > 0) {
                y += rowHeight + ROW_GAP;
            }
            column = 0;
            rowHeight = 0;
        }
    }
}
