package etamine.ordering.internal.plan;

import etamine.measures.Money;
import etamine.measures.Ratio;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * From which offer an item is bought: among those whose supplier can bring it before it runs short, the one that covers
 * what is wanted for least money; when nobody comes in time, the one who comes first.
 */
final class SupplierChoice {
    private final PlanModel model;
    private final Set<Slot> closed;

    SupplierChoice(PlanModel model, Set<Slot> closed) {
        this.model = model;
        this.closed = closed;
    }

    /** The offer to buy from; empty when no supplier can deliver within the plan. */
    Optional<OfferModel> of(ItemModel item) {
        int runsShort = LotSimulation.run(item, List.of()).firstUnmet(model.days());
        Comparator<OfferModel> order = Comparator.comparing((OfferModel offer) -> comesLate(offer, runsShort))
                .thenComparing(
                        offer -> comesLate(offer, runsShort) ? firstDay(offer).orElseThrow() : 0)
                .thenComparing(offer -> cost(item, offer))
                .thenComparing(SupplierChoice::unitPrice)
                .thenComparing(offer -> offer.offer().supplier())
                .thenComparing(offer -> offer.offer().code());
        return item.offers().stream()
                .filter(offer -> firstDay(offer).isPresent())
                .min(order);
    }

    private boolean comesLate(OfferModel offer, int runsShort) {
        return runsShort >= 0 && firstDay(offer).orElseThrow() > runsShort;
    }

    private OptionalInt firstDay(OfferModel offer) {
        SupplierModel supplier = model.suppliers().get(offer.offer().supplier());
        return supplier == null
                ? OptionalInt.empty()
                : supplier.slots().stream()
                        .filter(slot -> slot.day() < model.days() && !closed.contains(slot))
                        .mapToInt(Slot::day)
                        .findFirst();
    }

    private Money cost(ItemModel item, OfferModel offer) {
        int first = firstDay(offer).orElseThrow();
        SupplierModel supplier = model.suppliers().get(offer.offer().supplier());
        Course course = LotSimulation.run(item, List.of());
        long gap = item.wanted().level(first, supplier.next(first)) - course.opening()[first];
        long wanted = Math.max(gap, course.unmetBefore(model.days()));
        return offer.amount(Math.max(1, offer.packsFor(wanted)));
    }

    private static Ratio unitPrice(OfferModel offer) {
        return offer.tier(1).packPrice().toRatio().dividedBy(Ratio.of(offer.content()));
    }
}
