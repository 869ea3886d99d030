package etamine.recipes.internal;

import etamine.kitchen.item.Items;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/**
 * Takes the items from the registry at their first use rather than on activation: the items ask this bundle for what
 * recipes make, so taking them at once would let the two components wait for each other.
 */
@Component(service = KnownItems.class)
public final class FoundItems implements KnownItems {
    private final BundleContext context;
    private @Nullable ServiceReference<Items> reference;
    private @Nullable Items taken;

    /** Looks in the registry of that context. */
    @Activate
    public FoundItems(BundleContext context) {
        this.context = context;
    }

    @Reference(
            service = Items.class,
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    synchronized void bindItems(ServiceReference<Items> found) {
        release();
        reference = found;
    }

    synchronized void unbindItems(ServiceReference<Items> gone) {
        if (gone.equals(reference)) {
            release();
        }
    }

    @Deactivate
    synchronized void release() {
        ServiceReference<Items> held = reference;
        if (held != null && taken != null) {
            context.ungetService(held);
        }
        taken = null;
        reference = null;
    }

    @Override
    public synchronized Optional<Items> items() {
        ServiceReference<Items> held = reference;
        if (taken == null && held != null) {
            taken = context.getService(held);
        }
        return Optional.ofNullable(taken);
    }
}
