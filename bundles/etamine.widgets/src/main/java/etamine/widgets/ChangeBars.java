package etamine.widgets;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/**
 * How a figure became another: the whole before, each effect from where the one above it ended, the whole after. The
 * scale starts where it shows the effects best, and a gap in the wholes says when that is not zero.
 */
public final class ChangeBars extends Drawing {
    private static final int PAD = 10;
    private static final double AIR = 0.35;
    private List<Row> rows = List.of();

    /**
     * One line, top to bottom.
     *
     * @param label what it is
     * @param value the whole, or by how much it changes
     * @param text its figure in words, with a sign where it is a change
     * @param whole whether it is a whole rather than a change
     */
    public record Row(String label, double value, String text, boolean whole) {}

    private record Span(double from, double to) {
        double least() {
            return Math.min(from, to);
        }

        double most() {
            return Math.max(from, to);
        }
    }

    /** No figures yet. */
    public ChangeBars(Composite parent) {
        super(parent);
    }

    /** Shows these lines; a whole sets where the changes below it start. */
    public void show(List<Row> newRows) {
        rows = List.copyOf(newRows);
        requestLayout();
        redraw();
    }

    @Override
    public String description() {
        return rows.stream().map(row -> row.label() + ": " + row.text()).collect(Collectors.joining("; "));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int height = rows.size() * rowHeight() + PAD * 2;
        return new Point(wHint == SWT.DEFAULT ? 360 : wHint, hHint == SWT.DEFAULT ? height : hHint);
    }

    @Override
    protected void draw(GC gc, Rectangle area, Palette palette) {
        int labels = Math.min(area.width * 2 / 5, widest(gc, true)) + PAD;
        int texts = widest(gc, false) + PAD;
        Rectangle box = new Rectangle(PAD + labels, 0, Math.max(20, area.width - labels - texts - PAD * 2), 0);
        List<Span> spans = spans();
        double low = start(spans);
        double high = spans.stream().mapToDouble(Span::most).max().orElse(1);
        double scale = high > low ? box.width / (high - low) : 0;
        for (int at = 0; at < rows.size(); at++) {
            int y = PAD + at * rowHeight();
            Row row = rows.get(at);
            gc.setForeground(palette.ink());
            text(gc, row.label(), PAD, y + 2, labels - PAD);
            textTo(gc, row.text(), area.width - PAD, y + 2);
            int left = box.x + (int) Math.round(Math.max(0, spans.get(at).least() - low) * scale);
            int right = box.x + (int) Math.round((spans.get(at).most() - low) * scale);
            drawBar(gc, row, new Rectangle(left, y + 2, right - left, rowHeight() - 6), palette);
            if (row.whole() && low > 0) {
                gap(gc, box.x, y + 2, rowHeight() - 6, palette);
            }
            link(gc, spans, at, box.x + (int) Math.round((spans.get(at).to() - low) * scale), palette);
        }
    }

    private void drawBar(GC gc, Row row, Rectangle bar, Palette palette) {
        Tone tone = row.value() > 0 ? Tone.BAD : Tone.GOOD;
        boolean plain = row.whole() || row.value() == 0;
        gc.setBackground(plain ? palette.fill(Tone.QUIET) : palette.fill(tone));
        gc.fillRectangle(bar.x, bar.y, Math.max(2, bar.width), bar.height);
    }

    /** Two slanted strokes of paper: the bar does not start at zero. */
    private static void gap(GC gc, int x, int y, int height, Palette palette) {
        gc.setBackground(palette.paper());
        gc.fillPolygon(new int[] {x + 10, y - 1, x + 14, y - 1, x + 9, y + height + 1, x + 5, y + height + 1});
    }

    private void link(GC gc, List<Span> spans, int at, int x, Palette palette) {
        if (at + 1 < spans.size()) {
            int y = PAD + at * rowHeight() + rowHeight() - 4;
            gc.setForeground(palette.quiet());
            gc.drawLine(x, y, x, y + 6);
        }
    }

    private List<Span> spans() {
        double[] running = {0};
        return rows.stream()
                .map(row -> {
                    double from = row.whole() ? 0 : running[0];
                    running[0] = from + row.value();
                    return new Span(from, running[0]);
                })
                .toList();
    }

    /** Zero, unless the changes are so small beside the wholes that they could not be seen. */
    private double start(List<Span> spans) {
        double least = spans.stream().mapToDouble(Span::to).min().orElse(0);
        double most = spans.stream().mapToDouble(Span::to).max().orElse(1);
        double low = least - (most - least) * AIR;
        return least <= 0 || low <= most * AIR ? Math.min(0, least) : low;
    }

    private int widest(GC gc, boolean labels) {
        return rows.stream()
                .mapToInt(row -> gc.textExtent(labels ? row.label() : row.text()).x)
                .max()
                .orElse(0);
    }

    private int rowHeight() {
        GC gc = new GC(this);
        try {
            return gc.getFontMetrics().getHeight() + 10;
        } finally {
            gc.dispose();
        }
    }
}
