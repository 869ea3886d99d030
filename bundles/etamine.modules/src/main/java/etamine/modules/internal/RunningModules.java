package etamine.modules.internal;

import etamine.base.Subscription;
import etamine.modules.InstalledModule;
import etamine.modules.ModuleException;
import etamine.modules.ModuleList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.BundleListener;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceListener;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.runtime.ServiceComponentRuntime;

/** Reads the framework and the component runtime afresh for every question, so that it is never out of date. */
@Component
public final class RunningModules implements ModuleList {
    private static final String PREFIX = "etamine.";
    private static final String COMPONENTS_CHANGED = "(objectClass=" + ServiceComponentRuntime.class.getName() + ')';

    private final BundleContext context;
    private final ServiceComponentRuntime runtime;
    private final LaunchRecord launch;

    /** Looks at the framework that this bundle lives in. */
    @Activate
    public RunningModules(BundleContext context, @Reference ServiceComponentRuntime runtime) {
        this.context = context;
        this.runtime = runtime;
        this.launch = new LaunchRecord(context);
    }

    @Override
    public List<InstalledModule> modules() {
        ModuleReader reader = new ModuleReader(context, new ComponentStates(runtime), launch);
        Stream<InstalledModule> present = bundles().map(reader::read);
        return Stream.concat(present, unreadable(reader))
                .sorted(Comparator.comparing(InstalledModule::id))
                .toList();
    }

    @Override
    public void start(String id) throws ModuleException {
        Bundle bundle = find(id);
        try {
            bundle.start(Bundle.START_ACTIVATION_POLICY);
        } catch (BundleException e) {
            throw new ModuleException(bundle.getSymbolicName() + " cannot start: " + e.getMessage(), e);
        }
        new StoppedModules(context).remove(bundle.getSymbolicName());
    }

    @Override
    public void stop(String id) throws ModuleException {
        Bundle bundle = find(id);
        String name = bundle.getSymbolicName();
        if (launch.isVital(name) || bundle.equals(context.getBundle())) {
            throw new ModuleException(name + " stays: everything else needs it.");
        }
        try {
            bundle.stop();
        } catch (BundleException e) {
            throw new ModuleException(name + " did not stop cleanly: " + e.getMessage(), e);
        }
        new StoppedModules(context).add(name);
    }

    @Override
    public Subscription onChange(Runnable listener) {
        BundleListener bundles = event -> listener.run();
        ServiceListener components = event -> listener.run();
        context.addBundleListener(bundles);
        try {
            context.addServiceListener(components, COMPONENTS_CHANGED);
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException(e);
        }
        return () -> {
            context.removeBundleListener(bundles);
            context.removeServiceListener(components);
        };
    }

    private Bundle find(String id) throws ModuleException {
        return bundles()
                .filter(bundle -> bundle.getSymbolicName().equals(id)
                        || bundle.getSymbolicName().equals(PREFIX + id))
                .findFirst()
                .orElseThrow(() -> new ModuleException(
                        "There is no module " + id + ". The word 'modules' alone lists those there are."));
    }

    private Stream<Bundle> bundles() {
        return Arrays.stream(context.getBundles())
                .filter(bundle -> bundle.getSymbolicName() != null
                        && bundle.getSymbolicName().startsWith(PREFIX));
    }

    private Stream<InstalledModule> unreadable(ModuleReader reader) {
        return launch.failures().keySet().stream()
                .filter(name ->
                        bundles().noneMatch(bundle -> bundle.getSymbolicName().equals(name)))
                .map(reader::unreadable);
    }
}
