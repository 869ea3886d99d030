package etamine.costing;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** The rules of the open book. Thread-safe. */
@ProviderType
public interface CostSettings {

    /** The rules now; {@link CostRules#unset} while nobody has set any. */
    CostRules rules();

    /**
     * Changes the rules in one undoable step.
     *
     * @throws IllegalArgumentException if a rate or target is negative or an ending is not from 0 to less than 1; the
     *     message says which
     */
    void change(CostRules rules);

    /** The price sources that are there, in the order they are asked. */
    List<Source> sources();

    /**
     * A price source.
     *
     * @param id its id
     * @param label its name for people
     */
    record Source(String id, String label) {}
}
