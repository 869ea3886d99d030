package etamine.recipes.ui.internal;

import etamine.recipes.RecipePhotos.Photo;
import etamine.recipes.ui.internal.PhotoModel.Size;
import etamine.widgets.Palette;
import java.io.ByteArrayInputStream;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** Shows a photo as large as it fits; a click, Enter or a blank acts. */
final class PhotoCanvas extends Canvas {
    private static final int RING = 2;

    private final int widest;
    private final int tallest;
    private Optional<Image> image = Optional.empty();
    private Size size = new Size(1, 1);
    private String spoken = "";

    /**
     * An empty place for a photo.
     *
     * @param widest the most points it takes across
     * @param tallest the most points it takes down
     */
    PhotoCanvas(Composite parent, int widest, int tallest) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.widest = widest;
        this.tallest = tallest;
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Dispose, event -> image.ifPresent(Image::dispose));
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Traverse, PhotoCanvas::traverse);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = spoken;
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
    }

    /** Calls back on a click, Enter or a blank. */
    void onOpen(Runnable open) {
        addListener(SWT.MouseUp, event -> open.run());
        addListener(SWT.KeyDown, event -> {
            if (event.character == SWT.CR || event.character == ' ') {
                open.run();
            }
        });
    }

    /** How many pixels of the longer edge it shows on its screen. */
    int edge() {
        return Math.max(widest, tallest) * getMonitor().getZoom() / 100;
    }

    /** Unpacks a photo; on any thread. */
    static ImageData unpacked(Photo photo) {
        return new ImageData(new ByteArrayInputStream(photo.bytes()));
    }

    /** Shows a photo by its name; empty for none. */
    void show(Optional<ImageData> data, String name) {
        image.ifPresent(Image::dispose);
        image = data.map(pixels -> new Image(getDisplay(), pixels));
        size = data.map(pixels -> new Size(pixels.width, pixels.height).within(widest, tallest))
                .orElse(new Size(1, 1));
        spoken = name;
        setToolTipText(name);
        redraw();
    }

    /** What a screen reader says. */
    String spoken() {
        return spoken;
    }

    /** Whether a photo is shown. */
    boolean isFilled() {
        return image.isPresent();
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(size.width() + RING * 2, size.height() + RING * 2);
    }

    private void paint(GC gc) {
        image.ifPresent(shown -> {
            Rectangle pixels = shown.getBounds();
            Rectangle room = getClientArea();
            int x = (room.width - size.width()) / 2;
            int y = (room.height - size.height()) / 2;
            gc.setAdvanced(true);
            gc.setInterpolation(SWT.HIGH);
            gc.drawImage(shown, 0, 0, pixels.width, pixels.height, x, y, size.width(), size.height());
            gc.setForeground(
                    isFocusControl()
                            ? Palette.of(this).accent()
                            : Palette.of(this).line());
            gc.setLineWidth(isFocusControl() ? RING : 1);
            gc.drawRectangle(x - 1, y - 1, size.width() + 1, size.height() + 1);
        });
    }

    private static void traverse(Event event) {
        event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
    }
}
