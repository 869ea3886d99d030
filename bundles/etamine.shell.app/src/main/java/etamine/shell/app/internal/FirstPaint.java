package etamine.shell.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;

/** Runs something once the window has been seen for the first time; on request tells when that was, and closes. */
final class FirstPaint {
    private FirstPaint() {}

    static void then(Shell shell, Optional<Path> file, Runnable task) {
        shell.addListener(SWT.Paint, new Listener() {
            @Override
            public void handleEvent(Event event) {
                shell.removeListener(SWT.Paint, this);
                long now = System.currentTimeMillis();
                shell.getDisplay().asyncExec(() -> painted(shell, file, now, task));
            }
        });
    }

    private static void painted(Shell shell, Optional<Path> file, long now, Runnable task) {
        if (shell.isDisposed()) {
            return;
        }
        if (file.isEmpty()) {
            task.run();
            return;
        }
        try {
            Files.writeString(file.get(), Long.toString(now));
        } catch (IOException problem) {
            Trouble.note("writing the time of the first paint", problem);
        }
        shell.close();
    }
}
