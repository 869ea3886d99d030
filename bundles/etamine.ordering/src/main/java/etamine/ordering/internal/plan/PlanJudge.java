package etamine.ordering.internal.plan;

import etamine.kitchen.order.OrderLine;
import etamine.kitchen.supply.Offer;
import etamine.measures.Money;
import etamine.measures.Ratio;
import etamine.ordering.OrderPlan;
import etamine.ordering.OrderPlan.ExpectedWaste;
import etamine.ordering.OrderPlan.PlannedOrder;
import etamine.ordering.OrderPlan.Shortfall;
import etamine.ordering.PlanTerms;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns purchases of any method into a plan whose every figure and reason comes from the lot-by-lot simulation. */
public final class PlanJudge {
    private final PlanModel model;
    private final PlanWords words;
    private final Purchases purchases;

    /** Judges these purchases. */
    public PlanJudge(PlanModel model, PlanWords words, Purchases purchases) {
        this.model = model;
        this.words = words;
        this.purchases = purchases;
    }

    /** The plan. */
    public OrderPlan plan(PlanTerms terms, List<String> notes) {
        List<PlannedOrder> orders = new ArrayList<>();
        purchases.bySlot().forEach((slot, lines) -> orders.add(order(slot, lines)));
        Money total = Money.zero(model.currency());
        for (PlannedOrder order : orders) {
            total = total.plus(order.goods()).plus(order.fee());
        }
        List<Shortfall> shortfalls = new ArrayList<>();
        List<ExpectedWaste> waste = new ArrayList<>();
        judgeItems(shortfalls, waste);
        return new OrderPlan(terms, orders, shortfalls, waste, notes, total);
    }

    private void judgeItems(List<Shortfall> shortfalls, List<ExpectedWaste> wasted) {
        Shortages shortages = new Shortages(model, words, purchases);
        for (ItemModel item : model.items()) {
            List<Batch> planned = purchases.of(item).stream()
                    .map(purchase -> purchase.batch(model.start()))
                    .toList();
            Course course = LotSimulation.run(item, planned);
            shortages.of(item, course).ifPresent(shortfalls::add);
            course.waste().stream()
                    .filter(waste -> waste.day() < model.days())
                    .forEach(waste -> wasted.add(waste(item, waste)));
        }
        wasted.sort(Comparator.comparing(ExpectedWaste::day).thenComparing(ExpectedWaste::item));
    }

    private ExpectedWaste waste(ItemModel item, Course.Waste waste) {
        Batch batch = waste.batch();
        Optional<Money> value = batch.value()
                .map(all -> all.times(Ratio.of(waste.grains(), batch.grains())).rounded());
        String why = "What is left of " + batch.origin() + " after its last day, "
                + PlanWords.day(model.start().plusDays(batch.last())) + ".";
        return new ExpectedWaste(
                item.item(), model.date(waste.day()), item.grain().quantity(waste.grains()), value, why);
    }

    private PlannedOrder order(Slot slot, List<Purchase> bought) {
        List<OrderLine> lines = bought.stream()
                .sorted(Comparator.comparing(
                        (Purchase purchase) -> purchase.item().item()))
                .map(this::line)
                .toList();
        Money fee = model.suppliers().get(slot.supplier()).supplier().fee();
        return new PlannedOrder(slot.delivery(), lines, Purchases.goods(bought, model.currency()), fee);
    }

    private OrderLine line(Purchase purchase) {
        Offer offer = purchase.offer().offer();
        Money packPrice = purchase.offer().tier(purchase.packs()).packPrice();
        List<String> why = new LineReasons(model, words, purchase, purchases.of(purchase.item())).sentences();
        return new OrderLine(
                offer.item(), offer.code(), purchase.packs(), offer.pack(), packPrice, purchase.amount(), why);
    }
}
