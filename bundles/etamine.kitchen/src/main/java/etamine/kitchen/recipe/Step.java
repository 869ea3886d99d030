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
 * @param temperature the temperature as written, such as {@code 85 °C}; empty when none. The kitchen's own figure, never
 *     a safety limit
 * @param holds how long its result holds before it must be used; zero when not said
 * @param station the station that does it; the recipe's when empty
 */
public record Step(
        String id,
        String text,
        Duration hands,
        Duration unattended,
        String equipment,
        List<String> after,
        String temperature,
        Duration holds,
        String station) {

    /** Copies the list. */
    public Step {
        after = List.copyOf(after);
    }

    /** A step of which no temperature, holding time or station is said. */
    public Step(String id, String text, Duration hands, Duration unattended, String equipment, List<String> after) {
        this(id, text, hands, unattended, equipment, after, "", Duration.ZERO, "");
    }
}
