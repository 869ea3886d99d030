package etamine.ordering.internal.plan;

import etamine.measures.Money;
import etamine.measures.Ratio;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongBiFunction;

/**
 * Fills an order up to its supplier's minimum with what keeps longest among the items that are wanted anyway: first up
 * to twice the needed level, then as much as there is room for and can be used before it expires. What keeps and has no
 * capacity is bought for four weeks at most: a minimum is no reason to tie up money for longer.
 */
final class MinimumFilling {
    private static final int WEEKS_KEPT = 4;
    private static final int WEEK = 7;

    private final PlanModel model;
    private final Slot slot;
    private final ToLongBiFunction<ItemModel, Slot> opening;
    private final Map<ItemModel, Purchase> lines = new LinkedHashMap<>();
    private final Money minimum;
    private final int next;

    MinimumFilling(PlanModel model, Slot slot, ToLongBiFunction<ItemModel, Slot> opening) {
        this.model = model;
        this.slot = slot;
        this.opening = opening;
        SupplierModel supplier = model.suppliers().get(slot.supplier());
        this.minimum = supplier.supplier().minimum();
        this.next = supplier.next(slot.day());
    }

    /** An item that may be added, and how much of it there already is. */
    private record Candidate(ItemModel item, OfferModel offer, int last, long there) {}

    /** The purchases, filled up as far as possible. */
    List<Purchase> fill(List<Purchase> purchases) {
        purchases.forEach(purchase -> lines.put(purchase.item(), purchase));
        if (isBelow()) {
            List<Candidate> candidates = candidates();
            candidates.forEach(candidate -> add(candidate, usual(candidate)));
            candidates.forEach(candidate -> add(candidate, most(candidate)));
        }
        return new ArrayList<>(lines.values());
    }

    private boolean isBelow() {
        return goods().compareTo(minimum) < 0;
    }

    private Money goods() {
        return Purchases.goods(new ArrayList<>(lines.values()), model.currency());
    }

    private List<Candidate> candidates() {
        List<Candidate> candidates = new ArrayList<>();
        for (ItemModel item : model.items()) {
            offer(item)
                    .ifPresent(offer -> candidates.add(new Candidate(
                            item, offer, offer.lastDay(model.start(), slot.day()), opening.applyAsLong(item, slot))));
        }
        candidates.removeIf(candidate -> level(candidate) == 0);
        candidates.sort(Comparator.comparingInt(Candidate::last)
                .reversed()
                .thenComparing(candidate -> candidate.offer().tier(1).packPrice())
                .thenComparing(candidate -> candidate.item().item()));
        return candidates;
    }

    private Optional<OfferModel> offer(ItemModel item) {
        Purchase line = lines.get(item);
        return line != null
                ? Optional.of(line.offer())
                : item.offers().stream()
                        .filter(offer -> offer.offer().supplier().equals(slot.supplier()) && offer.holdsOn(slot.day()))
                        .findFirst();
    }

    private void add(Candidate candidate, long most) {
        while (isBelow()) {
            Purchase line =
                    lines.getOrDefault(candidate.item(), new Purchase(candidate.item(), candidate.offer(), slot, 0, 0));
            long content = candidate.offer().content();
            long room = candidate.offer().packsWithin(most - candidate.there() - line.packs() * content);
            long more = Math.min(room, packsMissing(candidate.offer(), line.packs()));
            if (more <= 0) {
                return;
            }
            lines.put(candidate.item(), line.withPacks(line.packs() + more, line.added() + more));
        }
    }

    private long packsMissing(OfferModel offer, long packs) {
        Ratio price = offer.tier(packs + 1).packPrice().toRatio();
        return price.isZero()
                ? 0
                : minimum.minus(goods()).toRatio().dividedBy(price).ceil();
    }

    private long level(Candidate candidate) {
        return candidate.item().wanted().level(slot.day(), next);
    }

    private long usual(Candidate candidate) {
        return Math.min(most(candidate), 2 * level(candidate));
    }

    private long most(Candidate candidate) {
        ItemModel.Wanted wanted = candidate.item().wanted();
        if (candidate.last() == Batch.KEEPS) {
            return wanted.capacity() < Long.MAX_VALUE ? wanted.capacity() : sensible(candidate);
        }
        boolean useKnown = wanted.use(0, Integer.MAX_VALUE) > 0;
        long usable = useKnown ? wanted.use(slot.day(), candidate.last() + 1) : 2 * level(candidate);
        return Math.min(wanted.capacity(), usable);
    }

    /** Where nobody says how much there is room for: {@link #WEEKS_KEPT} weeks' use, reckoned from the days known. */
    private long sensible(Candidate candidate) {
        ItemModel.Wanted wanted = candidate.item().wanted();
        int known = Math.max(1, wanted.use().length - slot.day());
        long weeks = Math.multiplyExact(wanted.use(slot.day(), Integer.MAX_VALUE), WEEKS_KEPT * WEEK) / known;
        return Math.max(weeks, 2 * level(candidate));
    }
}
