package etamine.inventory.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.inventory.RefusedException.Reason;
import etamine.kitchen.item.Item;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.Orders;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.supply.Catalogue;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Receiving an order: every pack that came becomes stock at the price ordered, with the last day that the offer's life
 * on arrival, or else the item's own keeping time, gives from today.
 *
 * @param order the order
 * @param movers what turns wishes into drafts
 * @param items what is known of items
 * @param catalogue the offers; empty when nobody keeps any
 */
record Receiving(SupplierOrder order, Movers movers, KnownItems items, Optional<Catalogue> catalogue) {
    private static final int PLACES = 6;

    static SupplierOrder find(Optional<Orders> orders, String id) {
        Optional<SupplierOrder> order = orders.flatMap(known -> known.find(id));
        Movers.refuseIf(
                orders.isEmpty(), Reason.ORDER, "No installed module keeps orders; receive the goods without one.");
        Movers.refuseIf(
                order.isEmpty(), Reason.ORDER, "There is no order “" + id + "”; list the orders for their numbers.");
        OrderState state = order.orElseThrow().state();
        Movers.refuseIf(
                state == OrderState.RECEIVED,
                Reason.ORDER,
                "The order “" + id + "” has been received already; receive what came later without an order.");
        Movers.refuseIf(
                state == OrderState.CANCELLED,
                Reason.ORDER,
                "The order “" + id + "” was called off; receive the goods without an order.");
        return order.orElseThrow();
    }

    List<Draft> drafts(Map<String, Long> shortPacks, Optional<String> place, Instant at, LocalDate today) {
        refuseUnknown(shortPacks);
        ObjectNode why = Json.empty().put("order", order.id()).put("supplier", order.supplier());
        List<Draft> drafts = new ArrayList<>();
        for (OrderLine line : order.lines()) {
            long missing = shortPacks.getOrDefault(line.item(), 0L);
            Movers.refuseIf(
                    missing < 0 || missing > line.packs(),
                    Reason.INPUT,
                    "Of “" + line.item() + "” " + line.packs()
                            + " packs were ordered; say how many of them are short.");
            if (missing < line.packs()) {
                drafts.add(draft(line, line.packs() - missing, place.orElse(""), at, today, why));
            }
        }
        return drafts;
    }

    private void refuseUnknown(Map<String, Long> shortPacks) {
        for (String item : shortPacks.keySet()) {
            long lines = order.lines().stream()
                    .filter(line -> line.item().equals(item))
                    .count();
            Movers.refuseIf(
                    lines == 0,
                    Reason.INPUT,
                    "“" + item + "” is not on the order “" + order.id() + "”; look at its lines.");
            Movers.refuseIf(
                    lines > 1,
                    Reason.INPUT,
                    "“" + item + "” stands on several lines of the order; receive them without the order.");
        }
    }

    private Draft draft(OrderLine line, long packs, String place, Instant at, LocalDate today, ObjectNode why) {
        Quantity quantity = line.pack().total().times(Ratio.of(packs));
        ItemMeasure.Amount amount = movers.amount(line.item(), quantity);
        LotKey lot = new LotKey(
                movers.place(line.item(), place),
                "",
                life(line).map(today::plus).map(LocalDate::toString).orElse(""),
                cost(line).toString(),
                LotKey.text(at),
                amount.dimension());
        return new Draft(MovementKind.RECEIVED, line.item(), lot, amount.base(), why);
    }

    private static UnitPrice cost(OrderLine line) {
        BigDecimal price = line.packPrice().amount();
        BigDecimal exact = price.scale() > PLACES ? price.setScale(PLACES, RoundingMode.HALF_UP) : price;
        return new UnitPrice(exact, line.pack().total());
    }

    private Optional<Period> life(OrderLine line) {
        return catalogue.stream()
                .flatMap(known -> known.offersFor(line.item(), order.deliver()).stream())
                .filter(offer -> offer.supplier().equals(order.supplier())
                        && offer.code().equals(line.code()))
                .flatMap(offer -> offer.lifeOnArrival().stream())
                .findFirst()
                .or(() -> items.find(line.item()).flatMap(Item::keeps));
    }
}
