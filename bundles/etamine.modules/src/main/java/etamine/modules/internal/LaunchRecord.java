package etamine.modules.internal;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/** What the launcher tells: which bundles it could not start, and which ones the program cannot be without. */
final class LaunchRecord {
    private final BundleContext context;

    LaunchRecord(BundleContext context) {
        this.context = context;
    }

    /** Reasons by symbolic name, or by file name when the file could not be read. */
    Map<String, String> failures() {
        @SuppressWarnings("unchecked") // the launcher offers it under this property
        Optional<Map<String, String>> map = (Optional<Map<String, String>>) (Optional<?>) find(Map.class, "failures");
        return map.orElse(Map.of());
    }

    boolean isVital(String name) {
        return find(List.class, "vital").map(list -> list.contains(name)).orElse(false);
    }

    private <T> Optional<T> find(Class<T> type, String property) {
        try {
            Collection<ServiceReference<T>> found =
                    context.getServiceReferences(type, "(launcher." + property + "=true)");
            return found.stream().findFirst().map(context::getService);
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
