package etamine.widgets;

import java.util.Collections;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/**
 * The part of a picture between its scales.
 *
 * @param box where points lie
 * @param across from left to right
 * @param up from bottom to top
 */
record PlotArea(Rectangle box, AxisScale across, AxisScale up) {
    private static final int PAD = 8;
    private static final int STEP_ROOM = 90;
    private static final int LEVEL_ROOM = 44;

    /** Round scales over these values, with room for their figures and titles. */
    static PlotArea over(GC gc, Rectangle area, List<Double> across, List<Double> up) {
        AxisScale wide = scale(across, Math.max(2, area.width / STEP_ROOM));
        AxisScale high = scale(up, Math.max(2, area.height / LEVEL_ROOM));
        int left = high.marks().stream()
                        .mapToInt(mark -> gc.textExtent(high.text(mark)).x)
                        .max()
                        .orElse(0)
                + PAD * 2;
        int line = gc.getFontMetrics().getHeight();
        int top = PAD * 2 + line;
        int bottom = PAD * 2 + line * 2;
        int width = Math.max(40, area.width - left - PAD * 3);
        Rectangle box = new Rectangle(left, area.y + top, width, Math.max(40, area.height - top - bottom));
        return new PlotArea(box, wide, high);
    }

    int x(double value) {
        return box.x + (int) Math.round(across.share(value) * box.width);
    }

    int y(double value) {
        return box.y + (int) Math.round((1 - up.share(value)) * box.height);
    }

    /** Draws both scales with their figures, thin lines at the levels, and the titles. */
    void drawAxes(GC gc, Palette palette, String acrossTitle, String upTitle) {
        int line = gc.getFontMetrics().getHeight();
        drawLevels(gc, palette, upTitle);
        for (double mark : across.marks()) {
            String text = across.text(mark);
            gc.setForeground(palette.line());
            gc.drawLine(x(mark), box.y + box.height, x(mark), box.y + box.height + 4);
            gc.setForeground(palette.quiet());
            gc.drawText(text, x(mark) - gc.textExtent(text).x / 2, box.y + box.height + 5, SWT.DRAW_TRANSPARENT);
        }
        int wide = gc.textExtent(acrossTitle).x;
        gc.setForeground(palette.ink());
        gc.drawText(acrossTitle, box.x + box.width - wide, box.y + box.height + line + PAD, SWT.DRAW_TRANSPARENT);
    }

    /** Draws the scale from bottom to top alone. */
    void drawLevels(GC gc, Palette palette, String upTitle) {
        int half = gc.getFontMetrics().getHeight() / 2;
        for (double mark : up.marks()) {
            String text = up.text(mark);
            gc.setForeground(palette.line());
            gc.drawLine(box.x, y(mark), box.x + box.width, y(mark));
            gc.setForeground(palette.quiet());
            gc.drawText(text, box.x - PAD - gc.textExtent(text).x, y(mark) - half, SWT.DRAW_TRANSPARENT);
        }
        gc.setForeground(palette.ink());
        gc.drawText(upTitle, PAD, PAD / 2, SWT.DRAW_TRANSPARENT);
    }

    private static AxisScale scale(List<Double> values, int steps) {
        double least = values.isEmpty() ? 0 : Collections.min(values);
        double most = values.isEmpty() ? 1 : Collections.max(values);
        double air = (most - least) * 0.04;
        return AxisScale.over(least - air, most + air, steps);
    }
}
