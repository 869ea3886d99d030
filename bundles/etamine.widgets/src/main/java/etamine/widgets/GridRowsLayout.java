package etamine.widgets;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/**
 * Rows of cells by weight with a narrow last cell, each row followed by a sentence that takes room only while it says
 * something. The first row has no sentence. Before all rows comes a slider, which stands beside them while it is visible.
 */
final class GridRowsLayout extends Layout {
    private static final int GAP = 4;
    private static final int ROW_GAP = 2;
    private static final int LEAST = 240;

    private static final int INDENT = 18;

    private final List<Integer> weights;
    private final List<Integer> below;

    GridRowsLayout(List<Integer> weights, List<Integer> below) {
        this.weights = List.copyOf(weights);
        this.below = List.copyOf(below);
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
            int broad = broad(slider);
            slider.setBounds(width - broad, 0, broad, height);
        }
    }

    private static int broad(Control slider) {
        return slider.getVisible() ? slider.computeSize(SWT.DEFAULT, SWT.DEFAULT).x : 0;
    }

    private int place(Control[] children, int whole, boolean move) {
        int width = whole - broad(children[0]);
        int cells = weights.size() + 1;
        int button = narrow(children, cells);
        int y = 0;
        for (int at = 1; at < children.length; ) {
            boolean heading = at == 1;
            y += row(children, at, y, width - button, button, move) + ROW_GAP;
            at += cells;
            if (!heading && !below.isEmpty()) {
                y += under(children, at, y, width - button, move) + ROW_GAP * 3;
                at += below.size();
            }
            if (!heading && at < children.length) {
                y += sentence(children[at], y, width, move);
                at++;
            }
        }
        return y;
    }

    /** The width of the buttons at the ends of the rows; the last cell of the headings is only a filler. */
    private static int narrow(Control[] children, int cells) {
        int first = cells * 2;
        return first < children.length ? children[first].computeSize(SWT.DEFAULT, SWT.DEFAULT).x : 0;
    }

    private int row(Control[] children, int from, int y, int room, int button, boolean move) {
        int height = 0;
        for (int i = 0; i <= weights.size(); i++) {
            height = Math.max(height, children[from + i].computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        }
        int total = weights.stream().mapToInt(Integer::intValue).sum();
        int before = 0;
        for (int i = 0; move && i < weights.size(); i++) {
            int x = room * before / total;
            before += weights.get(i);
            int end = room * before / total;
            put(children[from + i], x, y, end - x - GAP, height);
        }
        if (move) {
            put(children[from + weights.size()], room, y, button, height);
        }
        return height;
    }

    private int under(Control[] children, int from, int y, int room, boolean move) {
        int height = children[from].computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        int total = below.stream().mapToInt(Integer::intValue).sum();
        int before = 0;
        for (int i = 0; move && i < below.size(); i++) {
            int x = INDENT + (room - INDENT) * before / total;
            before += below.get(i);
            int end = INDENT + (room - INDENT) * before / total;
            put(children[from + i], x, y, end - x - GAP, height);
        }
        return height;
    }

    private static void put(Control control, int x, int y, int width, int height) {
        int own = Math.min(height, control.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        control.setBounds(x, y + (height - own) / 2, Math.max(0, width), own);
    }

    private static int sentence(Control sentence, int y, int width, boolean move) {
        int height = sentence.getVisible() ? sentence.computeSize(width, SWT.DEFAULT).y : 0;
        if (move) {
            sentence.setBounds(0, y, width, height);
        }
        return height == 0 ? 0 : height + ROW_GAP;
    }
}
