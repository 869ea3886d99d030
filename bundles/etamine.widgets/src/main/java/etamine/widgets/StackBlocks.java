package etamine.widgets;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/** Parts of a whole as one band of blocks, with a line for each part below, such as what a plate's cost is made of. */
public final class StackBlocks extends Drawing {
    private static final int PAD = 10;
    private static final int BAND = 26;
    private List<Block> blocks = List.of();
    private boolean lined = true;

    /**
     * One part.
     *
     * @param label what it is
     * @param value its size, on any scale shared by all parts
     * @param text its figure in words, such as {@code 1.84 EUR, 31 %}
     */
    public record Block(String label, double value, String text) {}

    /** No parts yet. */
    public StackBlocks(Composite parent) {
        super(parent);
    }

    /** Draws the band alone, for use above a table whose rows have the numbers of the blocks. */
    public StackBlocks bandOnly() {
        lined = false;
        return this;
    }

    /** Shows these parts, left to right. */
    public void show(List<Block> newBlocks) {
        blocks = List.copyOf(newBlocks);
        requestLayout();
        redraw();
    }

    @Override
    public String description() {
        return blocks.stream().map(block -> block.label() + ": " + block.text()).collect(Collectors.joining("; "));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int height = lined ? PAD * 3 + BAND + blocks.size() * rowHeight() : PAD + BAND;
        return new Point(wHint == SWT.DEFAULT ? 320 : wHint, hHint == SWT.DEFAULT ? height : hHint);
    }

    @Override
    protected void draw(GC gc, Rectangle area, Palette palette) {
        double total =
                blocks.stream().mapToDouble(block -> Math.max(0, block.value())).sum();
        int pad = lined ? PAD : 0;
        int room = area.width - pad * 2;
        double x = pad;
        for (int at = 0; at < blocks.size(); at++) {
            double width = total <= 0 ? 0 : room * Math.max(0, blocks.get(at).value()) / total;
            drawBlock(
                    gc, at, new Rectangle((int) x, lined ? PAD : PAD / 2, (int) (x + width) - (int) x, BAND), palette);
            if (lined) {
                drawLine(gc, at, PAD * 2 + BAND + at * rowHeight(), room, palette);
            }
            x += width;
        }
    }

    private void drawBlock(GC gc, int at, Rectangle box, Palette palette) {
        Color color = palette.series(at);
        gc.setBackground(color);
        gc.fillRectangle(box.x, box.y, Math.max(1, box.width - 1), box.height);
        gc.setForeground(palette.on(color));
        int height = gc.getFontMetrics().getHeight();
        if (box.width > gc.textExtent("00").x + 8) {
            text(gc, String.valueOf(at + 1), box.x + 5, box.y + (box.height - height) / 2, box.width - 8);
        }
    }

    private void drawLine(GC gc, int at, int y, int room, Palette palette) {
        int swatch = rowHeight() - 8;
        gc.setBackground(palette.series(at));
        gc.fillRectangle(PAD, y + 3, swatch, swatch);
        gc.setForeground(palette.ink());
        int figures = gc.textExtent(blocks.get(at).text()).x;
        String label = (at + 1) + "  " + blocks.get(at).label();
        text(gc, label, PAD + swatch + 8, y + 1, room - swatch - 16 - figures);
        textTo(gc, blocks.get(at).text(), PAD + room, y + 1);
    }

    private int rowHeight() {
        GC gc = new GC(this);
        try {
            return gc.getFontMetrics().getHeight() + 6;
        } finally {
            gc.dispose();
        }
    }
}
