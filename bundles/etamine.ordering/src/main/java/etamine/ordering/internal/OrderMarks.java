package etamine.ordering.internal;

import etamine.base.Subject;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.today.DayMark;
import etamine.kitchen.today.DayMarkSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Puts the deliveries of sent orders on the week ribbon; the cut-offs are the catalogue's. */
@Component
public final class OrderMarks implements DayMarkSource {
    private final ShelfOrders orders;
    private final Neighbours neighbours;

    /** Marks from the open book. */
    @Activate
    public OrderMarks(@Reference ShelfOrders orders, @Reference Neighbours neighbours) {
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
        return marks;
    }

    private static boolean within(LocalDate day, LocalDate from, LocalDate to) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}
