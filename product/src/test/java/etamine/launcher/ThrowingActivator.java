package etamine.launcher;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** An activator that never comes up. */
public class ThrowingActivator implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        throw new IllegalStateException("the larder is locked");
    }

    @Override
    public void stop(BundleContext context) {
        // never started
    }
}
