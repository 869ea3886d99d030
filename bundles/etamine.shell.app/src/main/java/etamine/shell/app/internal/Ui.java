package etamine.shell.app.internal;

import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** The way onto the window's thread from any other. */
final class Ui {
    private final Display display;
    private final Shell shell;

    Ui(Shell shell) {
        this.display = shell.getDisplay();
        this.shell = shell;
    }

    /** Runs on the window's thread soon; nothing happens once the window is gone. */
    void later(Runnable task) {
        if (display.isDisposed()) {
            return;
        }
        try {
            display.asyncExec(() -> ifThere(task));
        } catch (SWTException gone) {
            if (!display.isDisposed()) {
                throw gone;
            }
        }
    }

    private void ifThere(Runnable task) {
        if (!shell.isDisposed()) {
            task.run();
        }
    }

    /** Many wishes become one run, a little later, on the window's thread. */
    Runnable coalesced(int milliseconds, Runnable task) {
        Pending pending = new Pending(milliseconds, task);
        return pending::wish;
    }

    private final class Pending {
        private final int delay;
        private final Runnable task;
        private boolean waiting;

        Pending(int delay, Runnable task) {
            this.delay = delay;
            this.task = task;
        }

        synchronized void wish() {
            if (!waiting) {
                waiting = true;
                later(() -> display.timerExec(delay, () -> ifThere(this::run)));
            }
        }

        private void run() {
            synchronized (this) {
                waiting = false;
            }
            task.run();
        }
    }
}
