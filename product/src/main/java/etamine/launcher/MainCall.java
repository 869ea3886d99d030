package etamine.launcher;

import java.time.Duration;
import java.util.Collection;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceListener;
import org.osgi.framework.ServiceReference;

/** Waits for the service that wants the main thread and gives it to it. */
final class MainCall {
    private final BundleContext context;
    private final String mode;
    private final Duration patience;
    private final Failures failures;

    MainCall(BundleContext context, String mode, Duration patience, Failures failures) {
        this.context = context;
        this.mode = mode;
        this.patience = patience;
        this.failures = failures;
    }

    int run() throws Exception {
        ServiceReference<?> reference = await();
        Object service = context.getService(reference);
        if (!(service instanceof Callable<?> main)) {
            throw notReady("could not be made");
        }
        return main.call() instanceof Integer status ? status : 0;
    }

    private ServiceReference<?> await() throws StartException, InvalidSyntaxException, InterruptedException {
        BlockingQueue<Boolean> signals = new LinkedBlockingQueue<>();
        ServiceListener listener = event -> signals.add(true);
        String filter = "(launcher.main=" + mode + ')';
        context.addServiceListener(listener, filter);
        try {
            long end = System.nanoTime() + patience.toNanos();
            while (true) {
                Collection<? extends ServiceReference<?>> found = context.getServiceReferences(Callable.class, filter);
                if (!found.isEmpty()) {
                    return found.iterator().next();
                }
                failures.throwIfFatal();
                if (System.nanoTime() >= end) {
                    throw notReady("was not ready after " + patience.toSeconds() + " s");
                }
                signals.poll(100, TimeUnit.MILLISECONDS);
            }
        } finally {
            context.removeServiceListener(listener);
        }
    }

    private StartException notReady(String how) {
        String report = String.join(System.lineSeparator(), ComponentReport.of(context));
        return new StartException("The " + mode + ' ' + how + '.' + System.lineSeparator() + report);
    }
}
