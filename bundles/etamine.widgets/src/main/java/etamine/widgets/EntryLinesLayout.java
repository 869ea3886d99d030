package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/** A slider, headings, and for each line a field, a switch, figures, a button, and a wave and a sentence while visible. */
final class EntryLinesLayout extends Layout {
    private static final int GAP = 4;
    private static final int ROW_GAP = 2;
    private static final int LEAST = 260;
    private final int figures;

    EntryLinesLayout(int figures) {
        this.figures = figures;
    }

    @Override
    protected Point computeSize(Composite composite, int wHint, int hHint, boolean changed) {
        int width = wHint == SWT.DEFAULT ? LEAST : wHint;
        return new Point(width, place(composite.getChildren(), width, false));
    }

    @Override
    protected void layout(Composite composite, boolean changed) {
        int width = composite.getClientArea().width;
        if (width >= LEAST / 2) {
            int height = place(composite.getChildren(), width, true);
            Control slider = composite.getChildren()[0];
            if (slider.getVisible()) {
                int broad = slider.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
                slider.setBounds(width - broad, 0, broad, height);
            }
        }
    }

    private int place(Control[] children, int width, boolean move) {
        int cells = figures + 3;
        int slider = children[0].getVisible() ? children[0].computeSize(SWT.DEFAULT, SWT.DEFAULT).x + GAP : 0;
        int room = width - slider;
        int first = 1 + cells;
        int[] widths = widths(children, first, room);
        int y = 0;
        for (int at = 1; at < children.length; ) {
            y += row(children, at, y, widths, move) + ROW_GAP;
            at += cells;
            if (at > first && at + 1 < children.length) {
                y += trouble(children[at], children[at + 1], y, room, move);
                at += 2;
            }
        }
        return y;
    }

    /** The switch and the button take their own room, figures a ninth each, the field the rest. */
    private int[] widths(Control[] children, int first, int room) {
        int[] widths = new int[figures + 3];
        boolean any = first + figures + 2 < children.length;
        int button = any ? children[first + figures + 2].computeSize(SWT.DEFAULT, SWT.DEFAULT).x : 0;
        int figure = Math.max(56, room / 9);
        widths[1] = 40;
        for (int i = 0; i < figures; i++) {
            widths[2 + i] = figure;
        }
        widths[figures + 2] = button;
        widths[0] = room - widths[1] - figure * figures - button - GAP * (figures + 2);
        return widths;
    }

    private int row(Control[] children, int from, int y, int[] widths, boolean move) {
        int height = children[from].computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        int x = 0;
        for (int i = 0; move && i < widths.length; i++) {
            int own = Math.min(height, children[from + i].computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
            children[from + i].setBounds(x, y + (height - own) / 2, Math.max(0, widths[i]), own);
            x += widths[i] + GAP;
        }
        return height;
    }

    private static int trouble(Control wave, Control sentence, int y, int room, boolean move) {
        boolean visible = sentence.getVisible();
        int height = visible ? sentence.computeSize(room, SWT.DEFAULT).y : 0;
        int above = visible ? Wave.HEIGHT : 0;
        if (move) {
            wave.setBounds(0, y, room, above);
            sentence.setBounds(0, y + above, room, height);
        }
        return visible ? height + above + ROW_GAP : 0;
    }
}
