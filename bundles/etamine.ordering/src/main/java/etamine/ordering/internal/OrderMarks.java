package etamine.ordering.internal;

import etamine.base.Subject;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.today.DayMark;
import etamine.kitchen.today.DayMarkSource;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Puts deliveries of sent orders and the cut-offs to come on the week ribbon. */
@Component
public final class OrderMarks implements DayMarkSource {
    private static final int LONGEST_LEAD = 14;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

    private final Kitchen kitchen;
    private final ShelfOrders orders;
    private final Neighbours neighbours;

    /** Marks from the open book. */
    @Activate
    public OrderMarks(@Reference Kitchen kitchen, @Reference ShelfOrders orders, @Reference Neighbours neighbours) {
        this.kitchen = kitchen;
        this.orders = orders;
        this.neighbours = neighbours;
    }

    @Override
    public List<DayMark> marks(LocalDate from, LocalDate to) {
        List<DayMark> marks = new ArrayList<>();
        for (SupplierOrder order : orders.all()) {
            if (order.state() == OrderState.SENT && within(order.deliver(), from, to)) {
                String text = neighbours.supplierName(order.supplier()) + ", " + OrdersVerb.lines(order);
                marks.add(new DayMark(order.deliver(), DayMark.Kind.DELIVERY, text, new Subject("order", order.id())));
            }
        }
        neighbours.catalogue().ifPresent(catalogue -> addCutOffs(marks, catalogue, from, to));
        return marks;
    }

    private void addCutOffs(List<DayMark> marks, Catalogue catalogue, LocalDate from, LocalDate to) {
        ZonedDateTime now = ZonedDateTime.now(kitchen.clock());
        for (String supplier : catalogue.suppliers().keySet()) {
            for (Delivery delivery : catalogue.deliveries(supplier, now, to.plusDays(LONGEST_LEAD))) {
                LocalDate day = delivery.orderBy().toLocalDate();
                if (within(day, from, to)) {
                    marks.add(new DayMark(day, DayMark.Kind.CUT_OFF,
                            neighbours.supplierName(supplier) + " by " + TIME.format(delivery.orderBy()),
                            new Subject("plan", supplier + "/" + delivery.day())));
                }
            }
        }
    }

    private static boolean within(LocalDate day, LocalDate from, LocalDate to) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}
