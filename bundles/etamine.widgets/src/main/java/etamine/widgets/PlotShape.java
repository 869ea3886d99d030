package etamine.widgets;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;

/** Shapes that tell kinds of points apart without their colour. */
public enum PlotShape {
    /** Round. */
    CIRCLE,
    /** Four sides, upright. */
    SQUARE,
    /** Three sides, pointing up. */
    TRIANGLE,
    /** Four sides, standing on a corner. */
    DIAMOND;

    /** The shape of a number, taking turns. */
    public static PlotShape of(int number) {
        return values()[Math.floorMod(number, values().length)];
    }

    /** Draws it filled with an edge of ink, about {@code half} to each side of its middle. */
    void draw(GC gc, int x, int y, int half, Color fill) {
        gc.setBackground(fill);
        gc.setLineWidth(1);
        int[] corners = corners(x, y, half);
        if (corners.length == 0) {
            gc.fillOval(x - half, y - half, half * 2 + 1, half * 2 + 1);
            gc.drawOval(x - half, y - half, half * 2, half * 2);
        } else {
            gc.fillPolygon(corners);
            gc.drawPolygon(corners);
        }
    }

    private int[] corners(int x, int y, int half) {
        int wide = half + 1;
        return switch (this) {
            case CIRCLE -> new int[0];
            case SQUARE -> new int[] {x - half, y - half, x + half, y - half, x + half, y + half, x - half, y + half};
            case TRIANGLE -> new int[] {x, y - wide, x + wide, y + half, x - wide, y + half};
            case DIAMOND -> new int[] {x, y - wide - 1, x + wide + 1, y, x, y + wide + 1, x - wide - 1, y};
        };
    }
}
