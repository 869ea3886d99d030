package etamine.kitchen.recipe;

import etamine.measures.Quantity;
import java.time.Period;
import java.util.List;
import java.util.Optional;

/**
 * A process: it uses some things and makes one or more.
 *
 * @param id its identifier
 * @param name as on the card
 * @param kind what it is for
 * @param uses what one batch takes
 * @param makes what one batch gives; the first is the main one
 * @param portion the size of one portion of the main thing made
 * @param keeps how long the main thing keeps; a kitchen's own figure, never a safety limit
 * @param tested how often it was made with the same result
 * @param steps the work
 * @param menu how it is sold, if it is
 * @param notes free text; empty when none
 */
public record Recipe(
        String id,
        String name,
        Kind kind,
        List<Use> uses,
        List<Make> makes,
        Optional<Quantity> portion,
        Optional<Period> keeps,
        int tested,
        List<Step> steps,
        Optional<MenuPrice> menu,
        String notes) {

    /** Copies the lists. */
    public Recipe {
        uses = List.copyOf(uses);
        makes = List.copyOf(makes);
        steps = List.copyOf(steps);
    }
}
