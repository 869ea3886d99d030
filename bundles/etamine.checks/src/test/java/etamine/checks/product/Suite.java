package etamine.checks.product;

import etamine.launcher.Platform;
import etamine.launcher.Settings;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/**
 * The assembled program, running inside the test. The bundles have class loaders of their own, so what comes out of the
 * registry is called by name.
 */
public final class Suite implements AutoCloseable {
    public static final Path APP =
            Path.of("..", "..", "product", "target", "app").toAbsolutePath().normalize();
    private final Platform platform;
    private final Path folder;

    public Suite(Path folder, List<String> features) throws Exception {
        this(folder, features, Map.of());
    }

    public Suite(Path folder, List<String> features, Map<String, String> properties) throws Exception {
        this(APP, folder, features, properties);
    }

    Suite(Path app, Path folder, List<String> features, Map<String, String> properties) throws Exception {
        this(app, folder, features, properties, "console");
    }

    /**
     * Starts it.
     *
     * @param app the program folder
     * @param folder where relative names start, and where its books are
     * @param mode {@code console} or {@code window}
     */
    Suite(Path app, Path folder, List<String> features, Map<String, String> properties, String mode) throws Exception {
        this.folder = folder;
        Map<String, String> all = new HashMap<>(properties);
        all.put("etamine.folder", folder.toString());
        all.put("etamine.clock", "2026-11-24T10:00:00Z");
        platform = new Platform(new Settings(app, features, mode, List.of(), all, Duration.ofSeconds(60)));
        platform.start();
    }

    /** Gives the calling thread to the window or the console. */
    int call() throws Exception {
        return platform.call();
    }

    public BundleContext context() {
        return platform.context();
    }

    Bundle bundle(String name) {
        return Arrays.stream(context().getBundles())
                .filter(bundle -> name.equals(bundle.getSymbolicName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No bundle " + name));
    }

    public Map<String, String> failed() {
        return platform.failed();
    }

    /** Opens a new empty book. */
    public void create(String name) throws Exception {
        call(
                service("etamine.storage.BookSession"),
                "create",
                folder.resolve(name).toString());
    }

    public void open(String name) throws Exception {
        call(
                service("etamine.storage.BookSession"),
                "open",
                folder.resolve(name).toString());
    }

    public void closeBook() throws Exception {
        call(service("etamine.storage.BookSession"), "close");
    }

    /** The verbs there are, by name. */
    public Map<String, Object> verbs() throws Exception {
        Map<String, Object> verbs = new TreeMap<>();
        for (ServiceReference<?> reference : references("etamine.base.verb.Verb")) {
            Object verb = context().getService(reference);
            verbs.put((String) call(call(verb, "usage"), "name"), verb);
        }
        return verbs;
    }

    /** Runs a verb and gives its report: outcome, json, lines. */
    public Object run(String verb, List<String> arguments, Map<String, String> options) throws Exception {
        Object found = verbs().get(verb);
        if (found == null) {
            throw new AssertionError("No verb " + verb + " among " + verbs().keySet());
        }
        ClassLoader loader = found.getClass().getClassLoader();
        Class<?> callType = loader.loadClass("etamine.base.verb.VerbCall");
        Object progress = invoke(loader.loadClass("etamine.base.Progress"), null, "unseen");
        Object verbCall = callType.getConstructors()[0].newInstance(
                arguments, options, folder.resolve("book").toString(), folder, progress);
        return call(found, "run", verbCall);
    }

    /** Components that should run and do not, each with what it lacks. */
    public List<String> unsatisfied() throws Exception {
        Object runtime = service("org.osgi.service.component.runtime.ServiceComponentRuntime");
        Collection<?> descriptions =
                (Collection<?>) call(runtime, "getComponentDescriptionDTOs", (Object) new Bundle[0]);
        return descriptions.stream()
                .flatMap(description -> lacking(runtime, description).stream())
                .toList();
    }

    private static List<String> lacking(Object runtime, Object description) {
        try {
            Collection<?> configurations = (Collection<?>) call(runtime, "getComponentConfigurationDTOs", description);
            return configurations.stream()
                    .filter(configuration ->
                            (int) field(configuration, "state") != 4 && (int) field(configuration, "state") != 8)
                    .map(configuration -> field(description, "name") + " lacks "
                            + Arrays.toString(((Object[]) field(configuration, "unsatisfiedReferences")))
                            + field(configuration, "failure"))
                    .toList();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    Object service(String type) throws Exception {
        List<ServiceReference<?>> found = references(type);
        if (found.isEmpty()) {
            throw new AssertionError("No service " + type + "; unsatisfied: " + failed());
        }
        return context().getService(found.get(0));
    }

    private List<ServiceReference<?>> references(String type) throws InvalidSyntaxException {
        ServiceReference<?>[] found = context().getAllServiceReferences(type, null);
        return found == null ? List.of() : List.of(found);
    }

    /** Calls a public method of a service by name. */
    public static Object call(Object target, String method, Object... arguments) throws Exception {
        return invoke(target.getClass(), target, method, arguments);
    }

    private static Object invoke(Class<?> type, Object target, String method, Object... arguments) throws Exception {
        for (Method candidate : type.getMethods()) {
            if (candidate.getName().equals(method) && candidate.getParameterCount() == arguments.length) {
                candidate.setAccessible(true);
                try {
                    return candidate.invoke(target, arguments);
                } catch (InvocationTargetException e) {
                    throw e.getCause() instanceof Exception cause ? cause : e;
                }
            }
        }
        throw new AssertionError("No method " + method + " on " + type);
    }

    public static Object field(Object target, String name) {
        try {
            return target.getClass().getField(name).get(target);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        platform.close();
    }
}
