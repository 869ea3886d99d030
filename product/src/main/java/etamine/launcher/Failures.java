package etamine.launcher;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicReference;

/** What went wrong while starting: the first thing that ends the program, and the modules it can do without. */
final class Failures {
    private final Map<String, String> modules = new ConcurrentSkipListMap<>();
    private final AtomicReference<Optional<String>> fatal = new AtomicReference<>(Optional.empty());

    /** Notes that the bundle of that name did not start. */
    void add(String name, boolean vital, Throwable cause) {
        if (vital) {
            fatal.compareAndSet(Optional.empty(), Optional.of("Bundle " + name + " did not start: " + reason(cause)));
        } else {
            modules.put(name, reason(cause));
        }
    }

    /** Forgets the failure of a module that runs after all: late, or started again by somebody. */
    void recovered(String name) {
        modules.remove(name);
    }

    /** The modules that did not start with their reasons; it shows later failures too. */
    Map<String, String> modules() {
        return Collections.unmodifiableMap(modules);
    }

    void throwIfFatal() throws StartException {
        Optional<String> first = fatal.get();
        if (first.isPresent()) {
            throw new StartException(first.get());
        }
    }

    /** The message of the innermost cause, which is where the fault is. */
    private static String reason(Throwable cause) {
        Throwable inner = cause;
        while (inner.getCause() != null && inner.getCause() != inner) {
            inner = inner.getCause();
        }
        String message = inner.getMessage();
        return inner instanceof org.osgi.framework.BundleException && message != null
                ? message
                : inner.getClass().getSimpleName() + (message == null ? "" : ": " + message);
    }
}
