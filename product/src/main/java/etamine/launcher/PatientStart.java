package etamine.launcher;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;

/** Starts modules with patience, but not for ever: one that hangs is left to itself, so that the others come. */
final class PatientStart {
    /** The property that says how many seconds a module may take to start. */
    private static final String PROPERTY = "etamine.module.patience";

    private final Duration patience;
    private final Failures failures;
    private final List<Thread> hanging = new CopyOnWriteArrayList<>();

    PatientStart(Map<String, String> properties, Failures failures) {
        this.patience = Duration.ofSeconds(Long.parseLong(properties.getOrDefault(PROPERTY, "15")));
        this.failures = failures;
    }

    /** Runs the start on a thread of its own and comes back when it has ended or taken too long. */
    void run(Bundle bundle, Runnable start) {
        Thread starter = new Thread(start, "etamine-start-" + bundle.getSymbolicName());
        starter.setDaemon(true);
        starter.start();
        try {
            starter.join(patience.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (starter.isAlive()) {
            hanging.add(starter);
            String waited = "It was still starting after " + patience.toSeconds() + " s.";
            failures.add(bundle.getSymbolicName(), false, new BundleException(waited));
        }
    }

    /** Asks whatever still hangs to end. */
    void giveUp() {
        hanging.forEach(Thread::interrupt);
    }
}
