package etamine.modules.internal;

import etamine.modules.Need;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import org.osgi.service.component.runtime.dto.ComponentConfigurationDTO;
import org.osgi.service.component.runtime.dto.ComponentDescriptionDTO;
import org.osgi.service.component.runtime.dto.ReferenceDTO;
import org.osgi.service.component.runtime.dto.UnsatisfiedReferenceDTO;

/** What the components of all bundles wait for, taken at one moment. */
final class ComponentStates {
    private static final String CAUSE = "Caused by: ";

    private final ServiceComponentRuntime runtime;
    private final Collection<ComponentDescriptionDTO> all;

    ComponentStates(ServiceComponentRuntime runtime) {
        this.runtime = runtime;
        this.all = runtime.getComponentDescriptionDTOs();
    }

    /** Why a component of this bundle failed to come up, if one did. */
    Optional<String> failure(Bundle bundle) {
        return descriptions(bundle)
                .flatMap(this::configurations)
                .filter(each -> each.state == ComponentConfigurationDTO.FAILED_ACTIVATION)
                .map(each -> innermost(each.failure))
                .findFirst();
    }

    /** The services that this bundle's components cannot do without. */
    List<Need> services(Bundle bundle) {
        Map<String, Boolean> met = new TreeMap<>();
        descriptions(bundle).forEach(each -> {
            Set<String> missing = missing(each);
            for (ReferenceDTO reference : each.references) {
                if (isMandatory(reference)) {
                    met.merge(reference.interfaceName, !missing.contains(reference.name), Boolean::logicalAnd);
                }
            }
        });
        return met.entrySet().stream()
                .map(entry -> new Need(Need.Kind.SERVICE, entry.getKey(), entry.getValue()))
                .toList();
    }

    /** The services at the root of the waiting: those that no installed component offers, or whose component failed. */
    Set<String> roots(Bundle bundle) {
        Set<String> roots = new TreeSet<>();
        Set<Long> seen = new HashSet<>();
        descriptions(bundle).forEach(each -> addRoots(each, roots, seen));
        return roots;
    }

    private void addRoots(ComponentDescriptionDTO component, Set<String> roots, Set<Long> seen) {
        Set<String> missing = missing(component);
        for (ReferenceDTO reference : component.references) {
            if (missing.contains(reference.name)) {
                List<ComponentDescriptionDTO> waiting = providers(reference.interfaceName);
                if (waiting.isEmpty()) {
                    roots.add(reference.interfaceName);
                }
                for (ComponentDescriptionDTO each : waiting) {
                    if (seen.add(identity(each))) {
                        addRoots(each, roots, seen);
                    }
                }
            }
        }
    }

    /** Components that offer this service once they get what they wait for themselves. */
    private List<ComponentDescriptionDTO> providers(String service) {
        return all.stream()
                .filter(each -> List.of(each.serviceInterfaces).contains(service))
                .filter(each -> !missing(each).isEmpty())
                .toList();
    }

    private Set<String> missing(ComponentDescriptionDTO component) {
        Set<String> names = new HashSet<>();
        configurations(component).forEach(each -> {
            for (UnsatisfiedReferenceDTO reference : each.unsatisfiedReferences) {
                names.add(reference.name);
            }
        });
        return names;
    }

    private Stream<ComponentDescriptionDTO> descriptions(Bundle bundle) {
        return new ArrayList<>(all).stream().filter(each -> each.bundle.id == bundle.getBundleId());
    }

    private Stream<ComponentConfigurationDTO> configurations(ComponentDescriptionDTO component) {
        return runtime.getComponentConfigurationDTOs(component).stream();
    }

    private static long identity(ComponentDescriptionDTO component) {
        return component.bundle.id << 32 | component.name.hashCode() & 0xffffffffL;
    }

    private static boolean isMandatory(ReferenceDTO reference) {
        return reference.cardinality.startsWith("1");
    }

    /** The runtime gives a whole stack trace; its last cause is where the fault is. */
    private static String innermost(String trace) {
        List<String> lines = trace.lines().toList();
        return lines.stream()
                .filter(line -> line.startsWith(CAUSE))
                .reduce((first, last) -> last)
                .map(line -> line.substring(CAUSE.length()))
                .orElseGet(() -> lines.isEmpty() ? "it gave no reason" : lines.get(0));
    }
}
