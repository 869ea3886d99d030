package etamine.costing;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Tries changes out on the whole book without writing any. Thread-safe. */
@ProviderType
public interface Experiments {

    /**
     * What the changes would come to, for every recipe on the menu. Fast enough for every movement of a slider: a few
     * milliseconds with ten thousand recipes. What cannot be tried is left out and named in {@link Trial#notes}.
     */
    Trial reckon(Experiment experiment);

    /**
     * Writes the changes into the book in one step that can be undone: prices as written prices of the ingredients,
     * yields on their preparations, the rest on the recipes.
     *
     * @return what a person should know of it, such as that an offer is still asked before the price just written
     * @throws IllegalArgumentException if something cannot be written; nothing was, and the message says why
     */
    List<String> accept(Experiment experiment);
}
