package etamine.ordering.internal;

import etamine.base.Progress;
import etamine.base.Subject;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.Call.Urgency;
import etamine.kitchen.today.CallSource;
import etamine.measures.Money;
import etamine.ordering.OrderDesk;
import etamine.ordering.OrderPlan.PlannedOrder;
import etamine.ordering.PlanTerms;
import etamine.ordering.internal.plan.PlanWords;
import etamine.storage.Book;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/**
 * Calls for cut-offs of the coming two days with something to order, for drafts that missed theirs, and for deliveries
 * that nobody has received. Reckoned once for each state of the book and minute.
 */
@Component
public final class OrderCalls implements CallSource {
    private static final Duration AHEAD = Duration.ofHours(48);
    private static final Duration DAY = Duration.ofHours(24);
    private static final Duration SOON = Duration.ofHours(3);
    private static final int MINUTES = 60;

    private final Book book;
    private final Kitchen kitchen;
    private final OrderDesk desk;
    private final ShelfOrders orders;
    private final Neighbours neighbours;
    private volatile Known known = new Known(-1, Instant.MIN, List.of());

    private record Known(long revision, Instant minute, List<Call> calls) {}

    /** Something that can still be ordered for a delivery. */
    private record Open(String supplier, LocalDate day, Instant cutOff, int lines, Money goods, Subject subject) {}

    /** Calls about the open book. */
    @Activate
    public OrderCalls(
            @Reference Book book,
            @Reference Kitchen kitchen,
            @Reference OrderDesk desk,
            @Reference ShelfOrders orders,
            @Reference Neighbours neighbours) {
        this.book = book;
        this.kitchen = kitchen;
        this.desk = desk;
        this.orders = orders;
        this.neighbours = neighbours;
    }

    @Override
    public List<Call> calls(Instant now) {
        long revision = book.followed();
        Instant minute = now.truncatedTo(ChronoUnit.MINUTES);
        Known last = known;
        if (last.revision() == revision && last.minute().equals(minute)) {
            return last.calls();
        }
        List<Call> calls = reckon(now);
        known = new Known(revision, minute, calls);
        return calls;
    }

    private List<Call> reckon(Instant now) {
        List<Call> calls = new ArrayList<>();
        for (Open open : open()) {
            if (open.cutOff().isAfter(now) && !open.cutOff().isAfter(now.plus(AHEAD))) {
                calls.add(closing(open, now));
            }
        }
        LocalDate today = now.atZone(kitchen.house().zone()).toLocalDate();
        for (SupplierOrder order : orders.all()) {
            missed(order, now).ifPresent(calls::add);
            overdue(order, today).ifPresent(calls::add);
        }
        return List.copyOf(calls);
    }

    private List<Open> open() {
        List<Open> open = new ArrayList<>();
        Set<String> drafted = new HashSet<>();
        for (SupplierOrder order : orders.all()) {
            if (order.state() == OrderState.DRAFT && order.orderBy().isPresent()) {
                drafted.add(key(order.supplier(), order.deliver()));
                open.add(new Open(
                        order.supplier(),
                        order.deliver(),
                        order.orderBy().get().toInstant(),
                        order.lines().size(),
                        order.goods(),
                        new Subject("order", order.id())));
            }
        }
        PlanTerms week = new PlanTerms(kitchen.today(), PlanTerms.USUAL_DAYS);
        for (PlannedOrder order : desk.plan(week, Progress.unseen()).orders()) {
            Delivery delivery = order.delivery();
            String key = key(delivery.supplier(), delivery.day());
            if (!drafted.contains(key)) {
                open.add(new Open(
                        delivery.supplier(),
                        delivery.day(),
                        delivery.orderBy().toInstant(),
                        order.lines().size(),
                        order.goods(),
                        new Subject("plan", key)));
            }
        }
        return open;
    }

    private static String key(String supplier, LocalDate day) {
        return supplier + "/" + day;
    }

    private Call closing(Open open, Instant now) {
        Duration left = Duration.between(now, open.cutOff());
        Urgency urgency =
                left.compareTo(SOON) <= 0 ? Urgency.NOW : left.compareTo(DAY) <= 0 ? Urgency.TODAY : Urgency.SOON;
        String lines = open.lines() == 1 ? "1 line" : open.lines() + " lines";
        String text = neighbours.supplierName(open.supplier()) + " order closes in " + words(left) + ": " + lines + ", "
                + open.goods();
        String id = "cut-off/" + key(open.supplier(), open.day());
        return new Call(id, urgency, text, Optional.of(open.cutOff()), open.subject());
    }

    static String words(Duration left) {
        long minutes = Math.max(1, left.toMinutes());
        return minutes < MINUTES ? minutes + " min" : minutes / MINUTES + " h " + minutes % MINUTES + " min";
    }

    private Optional<Call> missed(SupplierOrder order, Instant now) {
        boolean late = order.state() == OrderState.DRAFT
                && order.orderBy()
                        .map(moment -> moment.toInstant().isBefore(now))
                        .orElse(false);
        return late
                ? Optional.of(new Call(
                        "missed/" + order.id(),
                        Urgency.NOW,
                        "The draft to "
                                + neighbours.supplierName(order.supplier()) + " for " + PlanWords.day(order.deliver())
                                + " missed its cut-off; plan again",
                        Optional.empty(),
                        new Subject("order", order.id())))
                : Optional.empty();
    }

    private Optional<Call> overdue(SupplierOrder order, LocalDate today) {
        boolean due = order.state() == OrderState.SENT && order.deliver().isBefore(today);
        return due
                ? Optional.of(new Call(
                        "overdue/" + order.id(),
                        Urgency.TODAY,
                        "The delivery from "
                                + neighbours.supplierName(order.supplier()) + " of " + PlanWords.day(order.deliver())
                                + " has not been received",
                        Optional.empty(),
                        new Subject("order", order.id())))
                : Optional.empty();
    }
}
