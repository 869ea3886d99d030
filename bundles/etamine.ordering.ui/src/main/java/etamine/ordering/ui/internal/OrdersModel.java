package etamine.ordering.ui.internal;

import etamine.base.Explanation;
import etamine.base.Progress;
import etamine.base.Subject;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.Orders;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Offer;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.ordering.IssuedOrder;
import etamine.ordering.OrderDesk;
import etamine.ordering.OrderPlan;
import etamine.ordering.PlanTerms;
import etamine.widgets.Choice;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the orders bench shows and does, without a widget. Writing is for another thread than the window's. */
final class OrdersModel {
    private static final Duration URGENT = Duration.ofHours(3);
    private static final int HOURS = 24;
    private static final int MINUTES = 60;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private final OrderDesk desk;
    private final Orders orders;
    private final Around around;
    private volatile Optional<OrderPlan> plan = Optional.empty();

    OrdersModel(OrderDesk desk, Orders orders, Around around) {
        this.desk = desk;
        this.orders = orders;
        this.around = around;
    }

    Around around() {
        return around;
    }

    /** Every order, drafts first, then by delivery. */
    List<OrderRow> rows() {
        Instant now = around.kitchen().clock().instant();
        return orders.all().stream()
                .map(order -> row(order, now))
                .sorted(Comparator.comparing(OrderRow::order))
                .toList();
    }

    private OrderRow row(SupplierOrder order, Instant now) {
        boolean draft = order.state() == OrderState.DRAFT;
        Optional<Duration> left =
                draft ? order.orderBy().map(moment -> Duration.between(now, moment.toInstant())) : Optional.empty();
        String place = (draft ? "0" : order.state() == OrderState.SENT ? "1" : "2") + order.deliver() + order.id();
        return new OrderRow(
                order.id(),
                around.supplierName(order.supplier()),
                DAY.format(order.deliver()),
                left.map(OrdersModel::words).orElse(""),
                left.map(time -> time.compareTo(URGENT) < 0).orElse(false),
                order.state(),
                order.lines().size(),
                order.goods().toString(),
                order.fee().toString(),
                place);
    }

    static String words(Duration left) {
        if (left.isNegative()) {
            return "closed";
        }
        long minutes = left.toMinutes();
        long hours = minutes / MINUTES;
        return hours < HOURS
                ? hours + " h " + minutes % MINUTES + " min"
                : hours / HOURS + " d " + hours % HOURS + " h";
    }

    /** The lines of an order. */
    List<LineRow> lines(String order) {
        return orders.find(order).map(this::lines).orElse(List.of());
    }

    private List<LineRow> lines(SupplierOrder order) {
        return order.lines().stream()
                .map(line -> new LineRow(order.id(), line, around.itemName(line.item())))
                .toList();
    }

    /** Why a line is what it is. */
    Explanation explain(LineRow row) {
        return explain(row.line());
    }

    private Explanation explain(OrderLine line) {
        String packs = line.packs() == 1 ? "1 pack" : line.packs() + " packs";
        List<Explanation> why = line.why().stream()
                .map(sentence -> Explanation.leaf(sentence, "", ""))
                .toList();
        return Explanation.of(around.itemName(line.item()), packs + " of " + line.pack() + ", " + line.amount(), why)
                .about(new Subject("item", line.item()));
    }

    /** An order as a whole. */
    Optional<Explanation> explain(String id) {
        return orders.find(id)
                .map(order -> Explanation.of(
                        around.supplierName(order.supplier()) + ", " + DAY.format(order.deliver()),
                        order.goods().plus(order.fee()).toString(),
                        List.of(
                                Explanation.leaf("Goods", order.goods().toString(), linesOf(order)),
                                Explanation.leaf("Delivery", order.fee().toString(), ""))));
    }

    private static String linesOf(SupplierOrder order) {
        return order.lines().size() == 1 ? "1 line" : order.lines().size() + " lines";
    }

    boolean isDraft(String id) {
        return orders.find(id)
                .filter(order -> order.state() == OrderState.DRAFT)
                .isPresent();
    }

    boolean isSent(String id) {
        return orders.find(id).filter(order -> order.state() == OrderState.SENT).isPresent();
    }

    List<String> drafts() {
        return rows().stream()
                .filter(row -> row.state() == OrderState.DRAFT)
                .map(OrderRow::id)
                .toList();
    }

    /** Plans the coming week and drafts its orders in place of the drafts there are. */
    int planAndDraft(Progress progress) {
        OrderPlan fresh = desk.plan(new PlanTerms(around.kitchen().today(), PlanTerms.USUAL_DAYS), progress);
        plan = Optional.of(fresh);
        return desk.draft(fresh).size();
    }

    /** What the last plan leaves short, expects to be binned, or could not take into account. */
    List<ShortRow> leftShort() {
        List<ShortRow> rows = new ArrayList<>();
        plan.ifPresent(made -> {
            made.shortfalls()
                    .forEach(line -> rows.add(new ShortRow(
                            "short",
                            line.item(),
                            around.itemName(line.item()),
                            DAY.format(line.day()),
                            amount(line.quantity()),
                            String.join(" ", line.why()))));
            made.expectedWaste()
                    .forEach(line -> rows.add(new ShortRow(
                            "waste",
                            line.item(),
                            around.itemName(line.item()),
                            DAY.format(line.day()),
                            amount(line.quantity()),
                            line.why())));
            made.notes().forEach(note -> rows.add(new ShortRow("note", "", "", "", "", note)));
        });
        return rows;
    }

    /** Why something is left short, goes to waste or does not count. */
    Explanation explain(ShortRow row) {
        String title = row.name().isEmpty() ? "Not taken into account" : row.name();
        List<Explanation> why = List.of(Explanation.leaf(row.why(), row.day(), ""));
        Explanation explanation = Explanation.of(title, row.quantity(), why);
        return row.item().isEmpty() ? explanation : explanation.about(new Subject("item", row.item()));
    }

    private String amount(Quantity quantity) {
        return QuantityText.format(quantity, around.kitchen().house().measures());
    }

    void setPacks(LineRow line, long packs) {
        desk.setPacks(line.order(), line.line(), Math.max(0, packs));
    }

    /** The offers that can be added to a draft. */
    List<Choice> offers(String order) {
        return offersOf(order).stream()
                .map(offer -> new Choice(key(offer), label(offer)))
                .toList();
    }

    private static String key(Offer offer) {
        return offer.item() + "/" + offer.code() + "/" + offer.pack();
    }

    private String label(Offer offer) {
        String label = around.itemName(offer.item()) + ", " + offer.pack();
        return offer.code().isEmpty() ? label : label + ", " + offer.code();
    }

    private List<Offer> offersOf(String id) {
        return orders.find(id)
                .map(order -> around.offers(order.supplier(), order.deliver()))
                .orElse(List.of());
    }

    void add(String order, String offerKey, long packs) {
        offersOf(order).stream()
                .filter(offer -> key(offer).equals(offerKey))
                .findFirst()
                .ifPresent(offer -> desk.addLine(order, offer, packs));
    }

    void discard(String order) {
        desk.discard(order);
    }

    void cancel(String order) {
        desk.cancel(order);
    }

    /** Issues drafts and says in a sentence what became of them. */
    Issue issue(List<String> ids, Path folder) throws IOException {
        List<IssuedOrder> issued = desk.issue(ids, folder);
        List<String> problems = issued.stream()
                .map(IssuedOrder::problem)
                .filter(text -> !text.isEmpty())
                .toList();
        long done = issued.size() - problems.size();
        long files = issued.stream().mapToLong(order -> order.files().size()).sum();
        String said = done == 0
                ? "No order was issued."
                : (done == 1 ? "1 order is" : done + " orders are") + " marked sent; " + files + " files are in "
                        + folder + ".";
        return new Issue(said, problems);
    }

    /**
     * What became of an issue.
     *
     * @param said a sentence
     * @param problems a sentence for each order that was not issued
     */
    record Issue(String said, List<String> problems) {}

    /** The draft for that delivery, if there is one. */
    Optional<String> draftFor(String supplierAndDay) {
        return orders.all().stream()
                .filter(order -> order.state() == OrderState.DRAFT)
                .filter(order -> (order.supplier() + "/" + order.deliver()).equals(supplierAndDay))
                .map(SupplierOrder::id)
                .findFirst();
    }
}
