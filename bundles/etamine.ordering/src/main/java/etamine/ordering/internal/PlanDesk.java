package etamine.ordering.internal;

import etamine.base.Progress;
import etamine.documents.Documents;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.Offer;
import etamine.measures.Money;
import etamine.ordering.IssuedOrder;
import etamine.ordering.OrderDesk;
import etamine.ordering.OrderPlan;
import etamine.ordering.OrderPlan.PlannedOrder;
import etamine.ordering.PlanTerms;
import etamine.ordering.internal.plan.ParMethod;
import etamine.ordering.internal.plan.PlanJudge;
import etamine.ordering.internal.plan.PlanModel;
import etamine.ordering.internal.plan.PlanWords;
import etamine.ordering.internal.plan.Purchases;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.Transaction;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Plans with the hand method and keeps orders on the shelf. */
@Component(service = {OrderDesk.class, PlanDesk.class})
public final class PlanDesk implements OrderDesk {
    private final Book book;
    private final Kitchen kitchen;
    private final Neighbours neighbours;
    private final ShelfPars pars;
    private final ShelfOrders orders;
    private final DiaryUse expectedUse;

    /** Works for the open book. */
    @Activate
    public PlanDesk(
            @Reference Book book,
            @Reference Kitchen kitchen,
            @Reference Neighbours neighbours,
            @Reference ShelfPars pars,
            @Reference ShelfOrders orders,
            @Reference DiaryUse expectedUse) {
        this.book = book;
        this.kitchen = kitchen;
        this.neighbours = neighbours;
        this.pars = pars;
        this.orders = orders;
        this.expectedUse = expectedUse;
    }

    @Override
    public OrderPlan plan(PlanTerms terms, Progress progress) {
        LocalDate last = terms.from().plusDays((long) terms.days() + PlanModel.LOOK_AHEAD - 1);
        progress.at("Reckoning what the coming days take", 0);
        UseForecast forecast = expectedUse.forecast(terms.from(), last);
        ModelGathering gathering = new ModelGathering(kitchen, neighbours, pars.all(), orders, terms);
        PlanModel model = gathering.model(forecast);
        Purchases purchases = new ParMethod().plan(model, progress);
        PlanWords words = new PlanWords(terms.from(), kitchen.house().measures());
        return new PlanJudge(model, words, purchases).plan(terms, gathering.notes());
    }

    @Override
    public List<SupplierOrder> draft(OrderPlan plan) {
        return book.write("Draft orders", transaction -> {
            Set<String> taken = new HashSet<>();
            List<String> old = new ArrayList<>();
            for (SupplierOrder order : orders.all()) {
                (order.state() == OrderState.DRAFT ? old : taken).add(order.id());
            }
            List<SupplierOrder> drafts = new ArrayList<>();
            plan.orders().forEach(order -> drafts.add(draft(order, taken)));
            drafts.forEach(draft -> old.remove(draft.id()));
            old.forEach(id -> orders.remove(transaction, id));
            drafts.forEach(draft -> orders.save(transaction, draft));
            return drafts;
        });
    }

    private static SupplierOrder draft(PlannedOrder order, Set<String> taken) {
        String supplier = order.delivery().supplier();
        String id = OrderNumber.next(supplier, order.delivery().day(), taken);
        taken.add(id);
        return new SupplierOrder(
                id,
                supplier,
                order.delivery().day(),
                Optional.of(order.delivery().orderBy()),
                OrderState.DRAFT,
                order.lines(),
                order.goods(),
                order.fee());
    }

    @Override
    public void setPacks(String id, OrderLine line, long packs) {
        change(id, "Packs of " + neighbours.itemName(line.item()) + " on " + id, (order, lines) -> {
            int place = DraftPricing.place(lines, line);
            if (place >= 0) {
                lines.set(place, priced(order, lines.get(place), packs));
            }
        });
    }

    @Override
    public void addLine(String id, Offer offer, long packs) {
        if (packs <= 0) {
            throw new IllegalArgumentException("Add 1 pack or more.");
        }
        change(id, "Add " + neighbours.itemName(offer.item()) + " to " + id, (order, lines) -> {
            OrderLine line = DraftPricing.line(catalogue(), offer, packs, DraftPricing.BY_HAND);
            int place = DraftPricing.place(lines, line);
            if (place < 0) {
                lines.add(line);
            } else {
                lines.set(
                        place, priced(order, lines.get(place), lines.get(place).packs() + packs));
            }
        });
    }

    private OrderLine priced(SupplierOrder order, OrderLine line, long packs) {
        return DraftPricing.priced(neighbours.catalogue(), order, line, packs);
    }

    private Catalogue catalogue() {
        return neighbours
                .catalogue()
                .orElseThrow(() -> new BookException(
                        BookException.Reason.OTHER, "Without the catalogue module nothing can be added to an order."));
    }

    private void change(String id, String label, BiConsumer<SupplierOrder, List<OrderLine>> work) {
        book.write(label, transaction -> {
            SupplierOrder order = draftOf(id);
            List<OrderLine> lines = new ArrayList<>(order.lines());
            work.accept(order, lines);
            lines.removeIf(line -> line.packs() <= 0);
            save(transaction, order, lines);
            return id;
        });
    }

    private void save(Transaction transaction, SupplierOrder order, List<OrderLine> lines) {
        if (lines.isEmpty()) {
            orders.remove(transaction, order.id());
            return;
        }
        Money goods = OrderForm.goods(lines, order.goods().currency());
        orders.save(
                transaction,
                new SupplierOrder(
                        order.id(),
                        order.supplier(),
                        order.deliver(),
                        order.orderBy(),
                        OrderState.DRAFT,
                        lines,
                        goods,
                        order.fee()));
    }

    private SupplierOrder draftOf(String id) {
        return orders.find(id)
                .filter(order -> order.state() == OrderState.DRAFT)
                .orElseThrow(() -> new BookException(
                        BookException.Reason.STALE,
                        "Order " + id + " is no draft any more; look at the list of orders."));
    }

    @Override
    public void discard(String id) {
        book.write("Drop draft " + id, transaction -> {
            orders.remove(transaction, draftOf(id).id());
            return id;
        });
    }

    @Override
    public void cancel(String id) {
        book.write("Call off " + id, transaction -> {
            if (orders.find(id)
                    .filter(order -> order.state() == OrderState.SENT)
                    .isEmpty()) {
                throw new BookException(
                        BookException.Reason.STALE, "Only a sent order can be called off; " + id + " is none.");
            }
            orders.move(transaction, id, OrderState.CANCELLED);
            return id;
        });
    }

    @Override
    public synchronized List<IssuedOrder> issue(List<String> ids, Path folder) throws IOException {
        Documents documents = neighbours
                .documents()
                .orElseThrow(() -> new BookException(
                        BookException.Reason.OTHER,
                        "PDF and CSV files cannot be written now; start etamine.documents and issue again."));
        OrderPapers papers = new OrderPapers(documents, kitchen, neighbours);
        List<IssuedOrder> issued = new ArrayList<>();
        for (String id : ids) {
            SupplierOrder order = draftOf(id);
            issued.add(isTooLate(order) ? tooLate(order) : new IssuedOrder(order, papers.write(order, folder), ""));
        }
        sendOrUnwrite(issued);
        return issued.stream().map(this::now).toList();
    }

    /** A paper of an order that was not sent must not lie about as if it had been. */
    private void sendOrUnwrite(List<IssuedOrder> issued) throws IOException {
        try {
            markSent(issued);
        } catch (BookException refused) {
            for (IssuedOrder done : issued) {
                for (Path file : done.files()) {
                    Files.deleteIfExists(file);
                }
            }
            throw refused;
        }
    }

    private void markSent(List<IssuedOrder> issued) {
        List<SupplierOrder> written = issued.stream()
                .filter(done -> done.problem().isEmpty())
                .map(IssuedOrder::order)
                .toList();
        String label = written.size() == 1 ? "Issue " + written.get(0).id() : "Issue orders";
        book.write(label, transaction -> {
            written.forEach(order -> orders.move(transaction, asWritten(order).id(), OrderState.SENT));
            return written.size();
        });
    }

    /** The draft as it is stored, which may have been changed while its papers were being written. */
    private SupplierOrder asWritten(SupplierOrder written) {
        if (!draftOf(written.id()).equals(written)) {
            throw new BookException(
                    BookException.Reason.STALE,
                    "Order " + written.id() + " was changed while it was being issued, so nothing was; issue again.");
        }
        return written;
    }

    private IssuedOrder now(IssuedOrder done) {
        return new IssuedOrder(orders.find(done.order().id()).orElse(done.order()), done.files(), done.problem());
    }

    private boolean isTooLate(SupplierOrder order) {
        return order.orderBy()
                .map(moment -> moment.toInstant().isBefore(kitchen.clock().instant()))
                .orElse(false);
    }

    private IssuedOrder tooLate(SupplierOrder order) {
        return new IssuedOrder(order, List.of(), "The cut-off of " + order.id() + " has passed; plan again.");
    }
}
