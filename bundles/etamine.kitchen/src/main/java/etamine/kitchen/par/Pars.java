package etamine.kitchen.par;

import java.util.Map;
import org.osgi.annotation.versioning.ProviderType;

/** The pars a kitchen has set. Thread-safe. */
@ProviderType
public interface Pars {

    /** All pars by item. */
    Map<String, Par> all();
}
