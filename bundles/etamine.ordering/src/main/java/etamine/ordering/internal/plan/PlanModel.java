package etamine.ordering.internal.plan;

import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Everything a method needs to know.
 *
 * @param start day 0
 * @param days how many days are planned and judged
 * @param currency what is paid in
 * @param items the items that are wanted, by id
 * @param suppliers the suppliers by id
 */
public record PlanModel(
        LocalDate start, int days, Currency currency, List<ItemModel> items, Map<String, SupplierModel> suppliers) {
    /** How many days after the plan's last are looked at, for what a delivery has to last until. */
    public static final int LOOK_AHEAD = 14;

    /** Copies the collections. */
    public PlanModel {
        items = List.copyOf(items);
        suppliers = Collections.unmodifiableSortedMap(new TreeMap<>(suppliers));
    }

    /** The deliveries within the plan's days, by day, then by supplier. */
    public List<Slot> slots() {
        return suppliers.values().stream()
                .flatMap(supplier -> supplier.slots().stream())
                .filter(slot -> slot.day() < days)
                .sorted(Comparator.comparingInt(Slot::day).thenComparing(Slot::supplier))
                .toList();
    }

    /** The date of a day. */
    public LocalDate date(int day) {
        return start.plusDays(day);
    }
}
