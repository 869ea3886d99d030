package etamine.modules.internal;

import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Dictionary;
import java.util.HashMap;
import java.util.Hashtable;
import java.util.List;
import java.util.Map;
import org.apache.felix.framework.Felix;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Constants;

/** A framework with the component runtime and this module in it, sharing the contract's classes with the test. */
final class SmallFramework implements AutoCloseable {
    private static final List<String> PLATFORM =
            List.of("org.osgi.util.function", "org.osgi.util.promise", "org.osgi.service.component-", "felix.scr");
    private static final String SHARED = "etamine.base;version=1.0.0,etamine.base.verb;version=1.0.0,"
            + "etamine.kitchen.today;version=1.0.0,etamine.modules;version=1.0.0";

    private final Felix felix;

    SmallFramework(Path folder, Map<String, String> failures, List<String> vital) throws Exception {
        Map<String, String> properties = new HashMap<>();
        properties.put(Constants.FRAMEWORK_STORAGE, folder.resolve("cache").toString());
        properties.put(Constants.FRAMEWORK_SYSTEMPACKAGES_EXTRA, SHARED);
        properties.put("etamine.stopped", folder.resolve("stopped").toString());
        properties.put("felix.log.level", "1");
        felix = new Felix(properties);
        felix.start();
        offer(Map.class, failures, "launcher.failures");
        offer(List.class, vital, "launcher.vital");
        for (String name : PLATFORM) {
            install(onClassPath(name)).start();
        }
        install(Path.of("target", "classes")).start();
    }

    Bundle install(Path file) throws Exception {
        return context().installBundle("reference:" + file.toUri());
    }

    <T> T service(Class<T> type) {
        return context().getService(context().getServiceReference(type));
    }

    private BundleContext context() {
        return felix.getBundleContext();
    }

    private <T> void offer(Class<T> type, T service, String property) {
        Dictionary<String, Object> properties = new Hashtable<>();
        properties.put(property, true);
        context().registerService(type, service, properties);
    }

    private static Path onClassPath(String name) {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> Path.of(entry).getFileName().toString().contains(name))
                .map(Path::of)
                .findFirst()
                .orElseThrow();
    }

    @Override
    public void close() throws Exception {
        felix.stop();
        felix.waitForStop(10_000);
    }
}
