package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** A picture drawn with the toolkit on paper, which says in words what it shows. Keep a table with the same figures. */
public abstract class Drawing extends Canvas {

    /** An empty picture. */
    protected Drawing(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED);
        setBackground(Palette.of(this).paper());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Resize, event -> redraw());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = description();
            }
        });
    }

    /** What the picture shows, in a sentence or two. */
    public abstract String description();

    /** Draws it into the area; anti-aliasing and the font are set. */
    protected abstract void draw(GC gc, Rectangle area, Palette palette);

    /** Draws text no wider than that, ending in an ellipsis if it must; answers the width used. */
    protected static int text(GC gc, String text, int x, int y, int width) {
        String fitting = fit(gc, text, width);
        gc.drawText(fitting, x, y, SWT.DRAW_TRANSPARENT);
        return gc.textExtent(fitting).x;
    }

    /** Draws text that ends at {@code right}. */
    protected static void textTo(GC gc, String text, int right, int y) {
        gc.drawText(text, right - gc.textExtent(text).x, y, SWT.DRAW_TRANSPARENT);
    }

    private static String fit(GC gc, String text, int width) {
        if (gc.textExtent(text).x <= width) {
            return text;
        }
        int length = text.length();
        while (length > 0 && gc.textExtent(text.substring(0, length).strip() + "\u2026").x > width) {
            length--;
        }
        return length == 0 ? "" : text.substring(0, length).strip() + "\u2026";
    }

    private void paint(GC gc) {
        Palette palette = Palette.of(this);
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        gc.setFont(getFont());
        gc.setBackground(palette.paper());
        gc.fillRectangle(area);
        gc.setForeground(palette.ink());
        draw(gc, area, palette);
    }
}
