package etamine.shell.app.internal;

import etamine.widgets.Icons;
import etamine.widgets.Palette;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;

/** The picture the desktop shows for the window. */
final class WindowIcon {
    private static final int[] SIZES = {16, 32, 48, 128};

    private WindowIcon() {}

    static Image[] images(Display display) {
        Image[] images = new Image[SIZES.length];
        for (int at = 0; at < SIZES.length; at++) {
            images[at] = Icons.image(
                    display, "etamine", SIZES[at], Palette.of(display).series(0));
        }
        return images;
    }
}
