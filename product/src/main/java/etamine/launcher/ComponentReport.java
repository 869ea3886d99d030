package etamine.launcher;

import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/**
 * Says which components are not running and what they miss. It asks the component runtime by reflection, because the
 * launcher does not share its classes.
 */
final class ComponentReport {
    private static final String RUNTIME = "org.osgi.service.component.runtime.ServiceComponentRuntime";
    private static final int SATISFIED = 4;
    private static final int ACTIVE = 8;

    private final Object runtime;
    private final Class<?> type;

    private ComponentReport(Object runtime, Class<?> type) {
        this.runtime = runtime;
        this.type = type;
    }

    /** One line for each component that is not running. */
    static List<String> of(BundleContext context) {
        ServiceReference<?> reference = context.getServiceReference(RUNTIME);
        if (reference == null) {
            return List.of("The component runtime is not running.");
        }
        try {
            Class<?> type = reference.getBundle().loadClass(RUNTIME);
            return new ComponentReport(context.getService(reference), type).lines();
        } catch (ReflectiveOperationException e) {
            return List.of("The component runtime gives no answer: " + e);
        }
    }

    private List<String> lines() throws ReflectiveOperationException {
        List<String> lines = new ArrayList<>();
        Object all = type.getMethod("getComponentDescriptionDTOs", org.osgi.framework.Bundle[].class)
                .invoke(runtime, (Object) new org.osgi.framework.Bundle[0]);
        for (Object description : (Collection<?>) all) {
            Object states = type.getMethod("getComponentConfigurationDTOs", description.getClass())
                    .invoke(runtime, description);
            for (Object configuration : (Collection<?>) states) {
                add(lines, description, configuration);
            }
        }
        return lines.isEmpty() ? List.of("  No component of the chosen features offers it.") : lines;
    }

    private void add(List<String> lines, Object description, Object configuration) throws ReflectiveOperationException {
        int state = (int) field(configuration, "state");
        if (state == SATISFIED || state == ACTIVE) {
            return;
        }
        Object name = field(description, "name");
        Object failure = field(configuration, "failure");
        if (failure != null) {
            lines.add("  " + name + " failed: "
                    + failure.toString().lines().findFirst().orElse(""));
            return;
        }
        Object missing = field(configuration, "unsatisfiedReferences");
        for (int i = 0; i < Array.getLength(missing); i++) {
            lines.add("  " + name + " waits for " + field(Array.get(missing, i), "name"));
        }
    }

    private static String innermost(String trace) {
        List<String> lines = trace.lines().toList();
        return lines.stream()
                .filter(line -> line.startsWith("Caused by: "))
                .reduce((first, last) -> last)
                .orElseGet(() -> lines.isEmpty() ? "no reason given" : lines.get(0));
    }

    private static Object field(Object dto, String name) throws ReflectiveOperationException {
        return dto.getClass().getField(name).get(dto);
    }
}
