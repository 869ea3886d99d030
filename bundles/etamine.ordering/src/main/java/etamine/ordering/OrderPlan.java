package etamine.ordering;

import etamine.kitchen.order.OrderLine;
import etamine.kitchen.supply.Delivery;
import etamine.measures.Money;
import etamine.measures.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What to order. Every figure comes from a simulation of the shelf, lot by lot and day by day.
 *
 * @param terms what was asked for
 * @param orders one per supplier and delivery, by delivery day
 * @param shortfalls what will be missing all the same
 * @param expectedWaste what will pass its last day unused
 * @param notes what the plan could not take into account, a sentence each
 * @param total goods and fees of all orders
 */
public record OrderPlan(
        PlanTerms terms,
        List<PlannedOrder> orders,
        List<Shortfall> shortfalls,
        List<ExpectedWaste> expectedWaste,
        List<String> notes,
        Money total) {

    /** Copies the lists. */
    public OrderPlan {
        orders = List.copyOf(orders);
        shortfalls = List.copyOf(shortfalls);
        expectedWaste = List.copyOf(expectedWaste);
        notes = List.copyOf(notes);
    }

    /**
     * One order.
     *
     * @param delivery who brings it, when, and by when it must be ordered
     * @param lines the lines by item
     * @param goods sum of the lines
     * @param fee the delivery fee
     */
    public record PlannedOrder(Delivery delivery, List<OrderLine> lines, Money goods, Money fee) {

        /** Copies the list. */
        public PlannedOrder {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Something that will be missing.
     *
     * @param item the item
     * @param day the first day it is missing
     * @param quantity how much is missing over the days of the plan
     * @param why the reasons, a sentence each
     */
    public record Shortfall(String item, LocalDate day, Quantity quantity, List<String> why) {

        /** Copies the list. */
        public Shortfall {
            why = List.copyOf(why);
        }
    }

    /**
     * Something that will pass its last day unused.
     *
     * @param item the item
     * @param day its last day
     * @param quantity how much of it will be left
     * @param value what that cost; empty when not known
     * @param why where it comes from
     */
    public record ExpectedWaste(String item, LocalDate day, Quantity quantity, Optional<Money> value, String why) {}
}
