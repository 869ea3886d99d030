package etamine.shell.app.internal;

import java.lang.System.Logger.Level;

/** Keeps failures for whoever looks into the log. */
final class Trouble {
    private static final System.Logger LOG = System.getLogger("etamine.shell.app");

    private Trouble() {}

    static void note(String during, Throwable problem) {
        LOG.log(Level.WARNING, "Failed while " + during, problem);
    }
}
