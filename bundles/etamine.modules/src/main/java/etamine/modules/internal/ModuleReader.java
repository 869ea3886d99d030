package etamine.modules.internal;

import etamine.modules.InstalledModule;
import etamine.modules.ModuleState;
import etamine.modules.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Constants;
import org.osgi.framework.wiring.FrameworkWiring;

/** Puts together what framework, component runtime and launcher know about one module. */
final class ModuleReader {
    /** It exists only while a book is open, so waiting for it is no reason to worry. */
    private static final Set<String> EXPECTED = Set.of("etamine.storage.Book");

    private final ComponentStates components;
    private final LaunchRecord launch;
    private final BundleNeeds bundles;

    ModuleReader(BundleContext context, ComponentStates components, LaunchRecord launch) {
        this.components = components;
        this.launch = launch;
        this.bundles = new BundleNeeds(
                context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION).adapt(FrameworkWiring.class));
    }

    InstalledModule read(Bundle bundle) {
        List<Need> needs = new ArrayList<>(bundles.of(bundle));
        needs.addAll(components.services(bundle));
        String id = bundle.getSymbolicName();
        Optional<String> failure = failure(bundle);
        return new InstalledModule(
                id,
                Optional.ofNullable(bundle.getHeaders("").get(Constants.BUNDLE_NAME))
                        .orElse(id),
                bundle.getVersion().toString(),
                failure.isPresent() ? ModuleState.FAILED : state(bundle),
                needs,
                failure,
                launch.isVital(id));
    }

    InstalledModule unreadable(String file) {
        Optional<String> failure = Optional.ofNullable(launch.failures().get(file));
        return new InstalledModule(file, file, "", ModuleState.FAILED, List.of(), failure, false);
    }

    private Optional<String> failure(Bundle bundle) {
        Optional<String> atLaunch = Optional.ofNullable(launch.failures().get(bundle.getSymbolicName()));
        return isOn(bundle) ? components.failure(bundle).or(() -> atLaunch) : atLaunch;
    }

    private ModuleState state(Bundle bundle) {
        if (!isOn(bundle)) {
            return ModuleState.STOPPED;
        }
        return EXPECTED.containsAll(components.roots(bundle)) ? ModuleState.RUNNING : ModuleState.WAITING;
    }

    private static boolean isOn(Bundle bundle) {
        return (bundle.getState() & (Bundle.ACTIVE | Bundle.STARTING)) != 0;
    }
}
