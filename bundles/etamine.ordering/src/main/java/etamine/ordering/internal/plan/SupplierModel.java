package etamine.ordering.internal.plan;

import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Supplier;
import java.util.List;

/**
 * A supplier as a plan sees it.
 *
 * @param supplier the supplier
 * @param slots deliveries that can still be ordered, by day; those after the plan's days only say what comes next
 */
public record SupplierModel(Supplier supplier, List<Slot> slots) {
    private static final int WEEK = 7;

    /**
     * A delivery.
     *
     * @param supplier the supplier's id
     * @param day the day it comes
     * @param delivery the delivery itself
     */
    public record Slot(String supplier, int day, Delivery delivery) {}

    /** Copies the list. */
    public SupplierModel {
        slots = List.copyOf(slots);
    }

    /** The day of the delivery after {@code day}; a week later when none is known. */
    public int next(int day) {
        return slots.stream()
                .mapToInt(Slot::day)
                .filter(other -> other > day)
                .findFirst()
                .orElse(day + WEEK);
    }
}
