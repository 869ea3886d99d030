package etamine.modules.internal;

import etamine.modules.Need;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.namespace.PackageNamespace;
import org.osgi.framework.wiring.BundleRequirement;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.BundleWiring;
import org.osgi.framework.wiring.FrameworkWiring;

/** The bundles and packages that a bundle needs; Java's own and the framework's are not worth a word. */
final class BundleNeeds {
    private final FrameworkWiring framework;

    BundleNeeds(FrameworkWiring framework) {
        this.framework = framework;
    }

    List<Need> of(Bundle bundle) {
        BundleWiring wiring = bundle.adapt(BundleWiring.class);
        return wiring == null ? missing(bundle) : providers(wiring);
    }

    private static List<Need> providers(BundleWiring wiring) {
        Set<String> names = new TreeSet<>();
        wiring.getRequiredWires(null).stream()
                .map(wire -> wire.getProviderWiring().getBundle())
                .filter(provider -> provider.getBundleId() != Constants.SYSTEM_BUNDLE_ID)
                .forEach(provider -> names.add(provider.getSymbolicName()));
        names.remove(wiring.getBundle().getSymbolicName());
        return names.stream()
                .map(name -> new Need(Need.Kind.BUNDLE, name, true))
                .toList();
    }

    private List<Need> missing(Bundle bundle) {
        List<Need> needs = new ArrayList<>();
        BundleRevision revision = bundle.adapt(BundleRevision.class);
        for (BundleRequirement requirement : revision.getDeclaredRequirements(PackageNamespace.PACKAGE_NAMESPACE)) {
            packageName(requirement)
                    .filter(name -> !isOptional(requirement))
                    .map(name -> new Need(Need.Kind.PACKAGE, name, isOffered(requirement)))
                    .ifPresent(needs::add);
        }
        needs.sort(Comparator.comparing(Need::met).thenComparing(Need::name));
        return needs;
    }

    private boolean isOffered(BundleRequirement requirement) {
        return !framework.findProviders(requirement).isEmpty();
    }

    private static boolean isOptional(BundleRequirement requirement) {
        return Constants.RESOLUTION_OPTIONAL.equals(requirement.getDirectives().get(Constants.RESOLUTION_DIRECTIVE));
    }

    private static Optional<String> packageName(BundleRequirement requirement) {
        String filter = requirement.getDirectives().getOrDefault(Constants.FILTER_DIRECTIVE, "");
        String key = '(' + PackageNamespace.PACKAGE_NAMESPACE + '=';
        int start = filter.indexOf(key);
        return start < 0
                ? Optional.empty()
                : Optional.of(filter.substring(start + key.length(), filter.indexOf(')', start)));
    }
}
