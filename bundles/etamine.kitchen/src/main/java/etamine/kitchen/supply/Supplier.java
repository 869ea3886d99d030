package etamine.kitchen.supply;

import etamine.measures.Money;
import java.time.DayOfWeek;
import java.util.Optional;
import java.util.Set;

/**
 * Somebody who delivers.
 *
 * @param id its identifier
 * @param name as on the order
 * @param email where orders go; empty when not known
 * @param deliveryDays the weekdays it delivers on
 * @param cutOff by when an order must be there; without one, until the delivery day begins
 * @param minimum least goods value of an order, without tax
 * @param fee charged for each delivery
 */
public record Supplier(
        String id,
        String name,
        String email,
        Set<DayOfWeek> deliveryDays,
        Optional<CutOff> cutOff,
        Money minimum,
        Money fee) {

    /** Copies the set. */
    public Supplier {
        deliveryDays = Set.copyOf(deliveryDays);
    }
}
