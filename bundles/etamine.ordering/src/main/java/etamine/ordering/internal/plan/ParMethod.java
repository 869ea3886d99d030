package etamine.ordering.internal.plan;

import etamine.base.Progress;
import etamine.measures.Money;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * What a cook does by hand: each item from one supplier; at each of its deliveries up to the needed level in whole
 * packs ({@code max(0, level - what will be there)}, rounded up; common practice); an order below the supplier's
 * minimum is filled with what keeps longest, and when that is not enough it is not sent.
 */
public final class ParMethod implements OrderMethod {

    @Override
    public Purchases plan(PlanModel model, Progress progress) {
        Map<Slot, Money> refused = new LinkedHashMap<>();
        SupplierChoice choice = new SupplierChoice(model);
        while (true) {
            Round round = new Round(model, refused, progress);
            Optional<Slot> below = round.run(choice);
            if (below.isEmpty()) {
                return new Purchases(round.bought, refused);
            }
            refused.put(below.get(), round.goodsBelow);
        }
    }

    /** One pass over the deliveries; ends early when an order cannot reach its minimum. */
    private static final class Round {
        private final PlanModel model;
        private final Map<Slot, Money> closed;
        private final Progress progress;
        private final Map<ItemModel, List<Batch>> planned = new HashMap<>();
        private final Map<Slot, List<Purchase>> bought = new LinkedHashMap<>();
        private Money goodsBelow;

        Round(PlanModel model, Map<Slot, Money> closed, Progress progress) {
            this.model = model;
            this.closed = closed;
            this.progress = progress;
            this.goodsBelow = Money.zero(model.currency());
        }

        Optional<Slot> run(SupplierChoice choice) {
            Map<ItemModel, OfferModel> chosen = chosen(choice);
            List<Slot> slots = model.slots();
            for (Slot slot : slots) {
                progress.at("Planning " + slot.delivery().day(), (double) slot.day() / model.days());
                if (progress.cancelled()) {
                    throw new CancellationException("Planning was stopped.");
                }
                if (!closed.containsKey(slot) && !fill(slot, chosen)) {
                    return Optional.of(slot);
                }
            }
            return Optional.empty();
        }

        private Map<ItemModel, OfferModel> chosen(SupplierChoice choice) {
            Map<ItemModel, OfferModel> chosen = new LinkedHashMap<>();
            model.items().forEach(item -> choice.of(item, closed.keySet()).ifPresent(offer -> chosen.put(item, offer)));
            return chosen;
        }

        private boolean fill(Slot slot, Map<ItemModel, OfferModel> chosen) {
            List<Purchase> purchases = new ArrayList<>();
            chosen.forEach((item, offer) -> {
                if (offer.offer().supplier().equals(slot.supplier())) {
                    item.offer(offer, slot.day())
                            .map(then -> new Purchase(item, then, slot, packs(item, then, slot), 0))
                            .filter(purchase -> purchase.packs() > 0)
                            .ifPresent(purchases::add);
                }
            });
            if (purchases.isEmpty()) {
                return true;
            }
            List<Purchase> filled = new MinimumFilling(model, slot, this::opening).fill(purchases);
            goodsBelow = Purchases.goods(filled, model.currency());
            if (goodsBelow.compareTo(minimum(slot)) < 0) {
                return false;
            }
            commit(slot, filled);
            return true;
        }

        private void commit(Slot slot, List<Purchase> filled) {
            bought.put(slot, filled);
            filled.forEach(purchase -> planned.computeIfAbsent(purchase.item(), item -> new ArrayList<>())
                    .add(purchase.batch(model.start())));
        }

        private Money minimum(Slot slot) {
            return model.suppliers().get(slot.supplier()).supplier().minimum();
        }

        private long packs(ItemModel item, OfferModel offer, Slot slot) {
            long there = opening(item, slot);
            if (there > item.wanted().orderAt()) {
                return 0;
            }
            int next = model.suppliers().get(slot.supplier()).next(slot.day());
            long needed = offer.packsFor(item.wanted().level(slot.day(), next) - there);
            return Math.min(needed, offer.packsWithin(item.wanted().capacity() - there));
        }

        private long opening(ItemModel item, Slot slot) {
            return LotSimulation.run(item, planned.getOrDefault(item, List.of()))
                    .opening()[slot.day()];
        }
    }
}
