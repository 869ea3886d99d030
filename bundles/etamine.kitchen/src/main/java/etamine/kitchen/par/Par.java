package etamine.kitchen.par;

import etamine.measures.Quantity;
import java.time.DayOfWeek;
import java.util.Map;
import java.util.Optional;

/**
 * How much of an item should be there.
 *
 * @param item the item
 * @param par on a day without a level of its own
 * @param weekdays levels of single weekdays
 * @param orderAt order only when down to this
 * @param capacity the most there is room for
 */
public record Par(
        String item,
        Quantity par,
        Map<DayOfWeek, Quantity> weekdays,
        Optional<Quantity> orderAt,
        Optional<Quantity> capacity) {

    /** Copies the map. */
    public Par {
        weekdays = Map.copyOf(weekdays);
    }

    /** The level of that weekday. */
    public Quantity on(DayOfWeek day) {
        return weekdays.getOrDefault(day, par);
    }
}
