package etamine.widgets;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/** A small line through a series, such as prices of the last months, with its first and last value written. */
public final class Spark extends Drawing {
    private static final int PAD = 8;
    private List<Mark> marks = List.of();
    private String what = "";

    /**
     * One point.
     *
     * @param value its height, on any scale
     * @param text the value in words
     */
    public record Mark(double value, String text) {}

    /** No line yet. */
    public Spark(Composite parent) {
        super(parent);
    }

    /** Shows a line through these points. */
    public void show(String subject, List<Mark> newMarks) {
        what = subject;
        marks = List.copyOf(newMarks);
        redraw();
    }

    @Override
    public String description() {
        if (marks.isEmpty()) {
            return what + ": no values";
        }
        String first = marks.get(0).text();
        return what + ": " + marks.size() + " values from " + first + " to " + last().text();
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 240 : wHint, hHint == SWT.DEFAULT ? 56 : hHint);
    }

    @Override
    protected void draw(GC gc, Rectangle area, Palette palette) {
        if (marks.isEmpty()) {
            gc.setForeground(palette.quiet());
            text(gc, "No values yet", PAD, PAD, area.width - PAD * 2);
            return;
        }
        int left = gc.textExtent(marks.get(0).text()).x + PAD * 2;
        int right = gc.textExtent(last().text()).x + PAD * 2;
        Rectangle box = new Rectangle(left, PAD, Math.max(10, area.width - left - right), area.height - PAD * 2);
        int[] points = points(box);
        int half = gc.getFontMetrics().getHeight() / 2;
        gc.setForeground(palette.quiet());
        text(gc, marks.get(0).text(), PAD, points[1] - half, left);
        gc.setForeground(palette.ink());
        text(gc, last().text(), area.width - right + PAD, points[points.length - 1] - half, right);
        drawLine(gc, points, palette);
    }

    private static void drawLine(GC gc, int[] points, Palette palette) {
        gc.setForeground(palette.fill(Tone.PLAIN));
        gc.setBackground(palette.fill(Tone.PLAIN));
        gc.setLineWidth(2);
        gc.setLineJoin(SWT.JOIN_ROUND);
        gc.drawPolyline(points);
        gc.fillOval(points[points.length - 2] - 3, points[points.length - 1] - 3, 7, 7);
    }

    private int[] points(Rectangle box) {
        double low = marks.stream().mapToDouble(Mark::value).min().orElse(0);
        double high = marks.stream().mapToDouble(Mark::value).max().orElse(1);
        double span = high > low ? high - low : 1;
        int[] points = new int[marks.size() * 2];
        for (int at = 0; at < marks.size(); at++) {
            double across = marks.size() == 1 ? 1 : (double) at / (marks.size() - 1);
            double up = high > low ? (marks.get(at).value() - low) / span : 0.5;
            points[at * 2] = box.x + (int) Math.round(across * box.width);
            points[at * 2 + 1] = box.y + (int) Math.round((1 - up) * box.height);
        }
        return points;
    }

    private Mark last() {
        return marks.get(marks.size() - 1);
    }
}
