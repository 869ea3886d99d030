package etamine.modules;

import java.util.List;
import java.util.Optional;

/**
 * One module, as it is at the moment of asking.
 *
 * @param id its symbolic name, such as {@code etamine.recipes}; the file name when the file could not be read
 * @param title its name for people
 * @param version its version; empty when the file could not be read
 * @param state how it is doing
 * @param needs what it cannot work without, in no particular order of weight
 * @param failure why it failed, when it did
 * @param vital whether the program is of no use without it, so that it cannot be stopped
 */
public record InstalledModule(
        String id,
        String title,
        String version,
        ModuleState state,
        List<Need> needs,
        Optional<String> failure,
        boolean vital) {

    /** Copies the list. */
    public InstalledModule {
        needs = List.copyOf(needs);
    }

    /** The needs that are not met. */
    public List<Need> missing() {
        return needs.stream().filter(need -> !need.met()).toList();
    }
}
