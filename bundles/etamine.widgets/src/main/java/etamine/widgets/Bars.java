package etamine.widgets;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/** Horizontal bars with a mark each, such as stock against par. */
public final class Bars extends Drawing {
    private static final int PAD = 10;
    private static final int LEAST = 80;
    private static final int TALL = 12;
    private List<Bar> bars = List.of();

    /**
     * One bar.
     *
     * @param label what it is
     * @param share its length, 1 being full width
     * @param mark where its mark stands on the same scale; zero or less for none
     * @param text the figures in words, such as {@code 4.5 l of 8 l}
     * @param tone how it should be seen
     */
    public record Bar(String label, double share, double mark, String text, Tone tone) {}

    /** No bars yet. */
    public Bars(Composite parent) {
        super(parent);
    }

    /** Shows these bars, top to bottom. */
    public void show(List<Bar> newBars) {
        bars = List.copyOf(newBars);
        requestLayout();
        redraw();
    }

    @Override
    public String description() {
        return bars.stream().map(bar -> bar.label() + ": " + bar.text()).collect(Collectors.joining("; "));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = wHint == SWT.DEFAULT ? 320 : wHint;
        GC gc = new GC(this);
        int height = bars.size() * (rowHeight() + (isTall(gc, width) ? TALL : 0)) + PAD * 2;
        gc.dispose();
        return new Point(width, hHint == SWT.DEFAULT ? height : hHint);
    }

    /** Whether names and figures leave a bar so little room that it goes below them. */
    private boolean isTall(GC gc, int width) {
        return width - widest(gc, true) - widest(gc, false) - PAD * 4 < LEAST;
    }

    @Override
    protected void draw(GC gc, Rectangle area, Palette palette) {
        boolean tall = isTall(gc, area.width);
        int labels = widest(gc, true) + PAD;
        int texts = widest(gc, false);
        int room = area.width - labels - texts - PAD * 3;
        int y = PAD;
        for (Bar bar : bars) {
            int figures = gc.textExtent(bar.text()).x;
            gc.setForeground(palette.ink());
            text(gc, bar.label(), PAD, y + 2, tall ? Math.max(LEAST, area.width - figures - PAD * 3) : labels);
            drawBar(
                    gc,
                    bar,
                    place(area.width, y, tall, new Rectangle(PAD + labels, y + 3, room, rowHeight() - 8)),
                    palette);
            gc.setForeground(palette.text(bar.tone()));
            textTo(gc, bar.text(), area.width - PAD, y + 2);
            y += rowHeight() + (tall ? TALL : 0);
        }
    }

    private Rectangle place(int width, int y, boolean tall, Rectangle beside) {
        return tall ? new Rectangle(PAD, y + rowHeight() - 4, width - PAD * 2, TALL - 4) : beside;
    }

    private static void drawBar(GC gc, Bar bar, Rectangle box, Palette palette) {
        gc.setBackground(palette.line());
        gc.fillRectangle(box.x, box.y + box.height - 2, box.width, 2);
        gc.setBackground(palette.fill(bar.tone()));
        gc.fillRectangle(box.x, box.y, (int) (box.width * Math.min(1, Math.max(0, bar.share()))), box.height);
        if (bar.mark() > 0) {
            int x = box.x + (int) (box.width * Math.min(1, bar.mark()));
            gc.setBackground(palette.ink());
            gc.fillRectangle(x - 1, box.y - 2, 2, box.height + 4);
        }
    }

    private int widest(GC gc, boolean labels) {
        return bars.stream()
                .mapToInt(bar -> gc.textExtent(labels ? bar.label() : bar.text()).x)
                .max()
                .orElse(0);
    }

    private int rowHeight() {
        GC gc = new GC(this);
        try {
            return gc.getFontMetrics().getHeight() + 8;
        } finally {
            gc.dispose();
        }
    }
}
