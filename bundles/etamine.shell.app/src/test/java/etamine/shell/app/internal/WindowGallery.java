package etamine.shell.app.internal;

import etamine.testing.VolatileBook;
import org.eclipse.swt.widgets.Display;

/** Opens the window around invented modules, to look at. */
public final class WindowGallery {
    private WindowGallery() {}

    public static void main(String[] args) {
        Display display = new Display();
        Gathering gathering = Fakes.kitchen();
        if (args.length == 0) {
            gathering.books().add(new VolatileBook());
        }
        Window window = new Window(display, gathering, WindowSettings.from(System::getProperty));
        window.open();
        window.runUntilClosed();
        display.dispose();
    }
}
