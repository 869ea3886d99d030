package etamine.launcher;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Dictionary;
import java.util.HashMap;
import java.util.Hashtable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.felix.framework.Felix;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleEvent;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkEvent;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.wiring.FrameworkWiring;

/**
 * The framework with the bundles of the chosen features. A failure of a vital bundle is thrown; the failure of any
 * other is kept and offered to the bundles as a {@code Map} service with the property {@code launcher.failures}.
 */
public final class Platform implements AutoCloseable {
    /** The logging API asks for a service loader; nobody logs through it, so it may find nothing and stay silent. */
    private static final String SERVICE_LOADER =
            "osgi.extender;osgi.extender=\"osgi.serviceloader.processor\";version:Version=\"1.0.0\","
                    + "osgi.serviceloader;osgi.serviceloader=\"org.slf4j.spi.SLF4JServiceProvider\"";

    private final Settings settings;
    private final Cache cache = new Cache();
    private final Failures failures = new Failures();
    private final Map<Bundle, Boolean> vital = new LinkedHashMap<>();
    private final AtomicBoolean closed = new AtomicBoolean();
    private final Framework framework;
    private final PatientStart patient;
    private Thread starter = new Thread();

    /** A platform that is not running yet. */
    public Platform(Settings settings) throws StartException {
        this.settings = settings;
        patient = new PatientStart(settings.properties(), failures);
        Natives.use(settings.app().resolve("native"));
        Map<String, String> properties = new HashMap<>(settings.properties());
        properties.put(Constants.FRAMEWORK_STORAGE, cache.folder().toString());
        properties.put(Constants.FRAMEWORK_SYSTEMCAPABILITIES_EXTRA, SERVICE_LOADER);
        properties.put("felix.log.level", "1");
        properties.put("felix.resolver.parallelism", "1"); // a start is over before more threads pay
        framework = new Felix(properties);
    }

    /** Installs and starts everything; when it returns, all vital bundles run. */
    public void start() throws StartException {
        startAll(prepare());
        failures.throwIfFatal();
    }

    /**
     * Installs everything, then lets the bundles start beside the calling thread, which may already ask for the window:
     * the window is there as soon as what it needs is, and the modules come to it one by one.
     */
    public void startBeside() throws StartException {
        List<Bundle> order = prepare();
        starter = new Thread(() -> startAll(order), "etamine-start");
        starter.setDaemon(true);
        starter.start();
        Toolkit.load(order);
    }

    private List<Bundle> prepare() throws StartException {
        List<FeatureList> features =
                Choice.of(settings.app().resolve("features"), settings.features(), settings.window());
        try {
            framework.init();
            offer(List.class, settings.arguments(), "launcher.arguments");
            offer(Map.class, failures.modules(), "launcher.failures");
            install(features);
            offer(List.class, vitalNames(), "launcher.vital");
            framework.getBundleContext().addFrameworkListener(this::listen);
            framework.getBundleContext().addBundleListener(this::noteStart);
            framework.start();
        } catch (BundleException e) {
            throw new StartException("The framework did not start: " + e.getMessage(), e);
        }
        framework.adapt(FrameworkWiring.class).resolveBundles(vital.keySet()); // together is cheaper than one by one
        return order(StoppedModules.read(settings.properties()));
    }

    /** The vital ones first, so that the window or the console need not wait for the others. */
    private List<Bundle> order(Set<String> stopped) {
        List<Bundle> first = new ArrayList<>();
        List<Bundle> second = new ArrayList<>();
        vital.forEach((bundle, needed) -> {
            if (needed) {
                first.add(bundle);
            } else if (!stopped.contains(bundle.getSymbolicName())) {
                second.add(bundle);
            }
        });
        first.addAll(second);
        return first;
    }

    private void startAll(List<Bundle> order) {
        for (Bundle bundle : order) {
            if (closed.get()) {
                return;
            }
            if (vital.get(bundle)) {
                start(bundle);
            } else {
                patient.run(bundle, () -> start(bundle));
            }
        }
    }

    /** The framework's own context, for asking the registry. */
    public BundleContext context() {
        return framework.getBundleContext();
    }

    /** The modules that did not start, by symbolic name, with the reason. */
    public Map<String, String> failed() {
        return failures.modules();
    }

    /** Runs the window or the console on the calling thread and returns its exit status. */
    public int call() throws Exception {
        return new MainCall(context(), settings.mode(), settings.patience(), failures).run();
    }

    private void install(List<FeatureList> features) throws StartException {
        Machine machine = Machine.running();
        Path bundles = settings.app().resolve("bundles");
        for (FeatureList feature : features) {
            for (BundleFile file : feature.bundles()) {
                if (file.fits(machine)) {
                    install(bundles.resolve(file.name()), feature.vital());
                }
            }
        }
        installModules(settings.app().resolve("modules"));
        failures.throwIfFatal();
    }

    private void installModules(Path folder) throws StartException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (DirectoryStream<Path> jars = Files.newDirectoryStream(folder, "*.jar")) {
            jars.forEach(jar -> install(jar, false));
        } catch (IOException e) {
            throw new StartException("The modules folder cannot be read: " + e.getMessage(), e);
        }
    }

    private void install(Path jar, boolean needed) {
        try {
            vital.put(context().installBundle("reference:" + jar.toUri()), needed);
        } catch (BundleException e) {
            failures.add(jar.getFileName().toString(), needed, e);
        }
    }

    private List<String> vitalNames() {
        return vital.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(entry -> entry.getKey().getSymbolicName())
                .toList();
    }

    private void start(Bundle bundle) {
        boolean fragment = bundle.getHeaders("").get(Constants.FRAGMENT_HOST) != null;
        if (fragment || bundle.getState() == Bundle.RESOLVED && isLibrary(bundle)) {
            return;
        }
        try {
            // transient: the folder lives no longer than the process, so nothing need be noted in it
            bundle.start(Bundle.START_TRANSIENT | Bundle.START_ACTIVATION_POLICY);
        } catch (BundleException e) {
            failures.add(bundle.getSymbolicName(), vital.get(bundle), e);
        }
    }

    /** What has nothing to start is there for others as soon as it is resolved. */
    private static boolean isLibrary(Bundle bundle) {
        return !bundle.getSymbolicName().startsWith("etamine.")
                && bundle.getHeaders("").get(Constants.BUNDLE_ACTIVATOR) == null;
    }

    /** A bundle that activates late reports here and nowhere else. */
    private void listen(FrameworkEvent event) {
        if (event.getType() == FrameworkEvent.ERROR && event.getThrowable() != null) {
            Bundle bundle = event.getBundle();
            failures.add(bundle.getSymbolicName(), vital.getOrDefault(bundle, true), event.getThrowable());
            System.err.println("etamine: " + bundle.getSymbolicName() + ": " + event.getThrowable());
        }
    }

    /** Told after the component runtime, so that a module whose component hangs does not count as started. */
    private void noteStart(BundleEvent event) {
        if (event.getType() == BundleEvent.STARTED) {
            failures.recovered(event.getBundle().getSymbolicName());
        }
    }

    private <T> void offer(Class<T> type, T service, String property) {
        Dictionary<String, Object> properties = new Hashtable<>();
        properties.put(property, true);
        context().registerService(type, service, properties);
    }

    /** Stops every bundle and removes what the framework wrote. Calling it again is harmless. */
    @Override
    public void close() {
        if (!closed.compareAndSet(false, true)) {
            return;
        }
        patient.giveUp();
        try {
            starter.join(5_000);
            framework.stop();
            framework.waitForStop(10_000);
        } catch (BundleException e) {
            System.err.println("etamine: the framework did not stop: " + e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        cache.close();
    }
}
