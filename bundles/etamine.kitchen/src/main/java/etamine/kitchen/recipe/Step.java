package etamine.kitchen.recipe;

import java.time.Duration;
import java.util.List;

/**
 * One step of the work.
 *
 * @param id its name within the recipe
 * @param text what to do
 * @param hands hands-on time for one batch
 * @param unattended time that passes by itself
 * @param equipment what it occupies; empty when nothing in particular
 * @param after ids of steps that must be done before
 */
public record Step(String id, String text, Duration hands, Duration unattended, String equipment, List<String> after) {

    /** Copies the list. */
    public Step {
        after = List.copyOf(after);
    }
}
