package etamine.shell.app.internal;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/**
 * Puts off icons until the window has been seen: turning drawings into images costs a fifth of a second the first time,
 * which nobody should wait for in front of an empty screen.
 */
final class Dressing {
    private static final String KEY = "etamine.dressing";

    private Dressing() {}

    /** Runs {@code task} after the first paint, or now if that has been; not for controls that are gone by then. */
    static void of(Control control, Runnable task) {
        Object state = control.getDisplay().getData(KEY);
        if (state == Boolean.TRUE) {
            task.run();
            return;
        }
        Waiting waiting = state instanceof Waiting known ? known : new Waiting(new ArrayList<>());
        control.getDisplay().setData(KEY, waiting);
        waiting.tasks.add(() -> {
            if (!control.isDisposed()) {
                task.run();
            }
        });
    }

    /** The window has been seen. */
    static void now(Display display) {
        Object state = display.getData(KEY);
        display.setData(KEY, Boolean.TRUE);
        if (state instanceof Waiting waiting) {
            waiting.tasks.forEach(Runnable::run);
        }
    }

    private record Waiting(List<Runnable> tasks) {}
}
