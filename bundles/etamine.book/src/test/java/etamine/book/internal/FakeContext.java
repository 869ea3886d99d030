package etamine.book.internal;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceRegistration;

/** A bundle context that knows properties and remembers which services are registered. */
final class FakeContext {
    final Map<String, String> properties = new HashMap<>();
    final List<Object> services = new ArrayList<>();

    BundleContext context() {
        return (BundleContext) Proxy.newProxyInstance(
                FakeContext.class.getClassLoader(),
                new Class<?>[] {BundleContext.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "getProperty" -> properties.get(arguments[0]);
                    case "registerService" -> register(arguments[1]);
                    default -> throw new AssertionError(method);
                });
    }

    private Object register(Object service) {
        services.add(service);
        return Proxy.newProxyInstance(
                FakeContext.class.getClassLoader(),
                new Class<?>[] {ServiceRegistration.class},
                (proxy, method, arguments) -> services.remove(service));
    }
}
