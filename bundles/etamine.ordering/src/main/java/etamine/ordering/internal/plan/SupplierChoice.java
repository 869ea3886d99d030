package etamine.ordering.internal.plan;

import etamine.measures.Money;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * From which offer an item is bought: among those whose supplier can bring it before it runs short, the one that covers
 * one and the same amount for least money, in whole packs and with its price breaks; when nobody comes in time, the one
 * who comes first. The amount is the most that any of the suppliers would have to bring at its first delivery, so that
 * who comes often does not win by bringing little at a time.
 */
final class SupplierChoice {
    private static final Comparator<Bid> BEST_FIRST = Comparator.comparing(Bid::late)
            .thenComparing(bid -> bid.late() ? bid.day() : 0)
            .thenComparing(Bid::bill)
            .thenComparing(Bid::day)
            .thenComparing(bid -> bid.offer().offer().supplier())
            .thenComparing(bid -> bid.offer().offer().code());

    private final PlanModel model;
    private final Map<ItemModel, Course> unordered = new HashMap<>();

    SupplierChoice(PlanModel model) {
        this.model = model;
    }

    /** An offer whose supplier first comes on {@code day}. */
    private record Candidate(OfferModel offer, int day) {}

    /** What a candidate asks for the common amount, and whether it comes only after the item has run short. */
    private record Bid(OfferModel offer, int day, boolean late, Money bill) {}

    /** The offer to buy from; empty when no supplier can deliver within the plan but on {@code closed} deliveries. */
    Optional<OfferModel> of(ItemModel item, Set<Slot> closed) {
        List<Candidate> candidates = candidates(item, closed);
        if (candidates.size() < 2) {
            return candidates.stream().findFirst().map(Candidate::offer);
        }
        Course course = unordered.computeIfAbsent(item, one -> LotSimulation.run(one, List.of()));
        int runsShort = course.firstUnmet(model.days());
        long amount = amount(item, candidates, course);
        return candidates.stream()
                .map(candidate -> bid(candidate, runsShort, amount))
                .min(BEST_FIRST)
                .map(Bid::offer);
    }

    private List<Candidate> candidates(ItemModel item, Set<Slot> closed) {
        List<Candidate> candidates = new ArrayList<>();
        for (OfferModel offer : item.offers()) {
            firstDay(offer, closed).ifPresent(day -> candidates.add(new Candidate(offer, day)));
        }
        return candidates.stream()
                .filter(one -> candidates.stream().noneMatch(other -> isEarlierPrice(other, one)))
                .toList();
    }

    /** An article is compared at the price of its first delivery. */
    private static boolean isEarlierPrice(Candidate other, Candidate one) {
        return other.day() < one.day() && other.offer().isArticleOf(one.offer());
    }

    private OptionalInt firstDay(OfferModel offer, Set<Slot> closed) {
        SupplierModel supplier = model.suppliers().get(offer.offer().supplier());
        return supplier == null
                ? OptionalInt.empty()
                : supplier.slots().stream()
                        .filter(slot -> slot.day() < model.days() && offer.holdsOn(slot.day()))
                        .filter(slot -> !closed.contains(slot))
                        .mapToInt(Slot::day)
                        .findFirst();
    }

    private long amount(ItemModel item, List<Candidate> candidates, Course course) {
        long most = Math.max(1, course.unmetBefore(model.days()));
        for (Candidate candidate : candidates) {
            SupplierModel supplier =
                    model.suppliers().get(candidate.offer().offer().supplier());
            int day = candidate.day();
            most = Math.max(most, item.wanted().level(day, supplier.next(day)) - course.opening()[day]);
        }
        return most;
    }

    private static Bid bid(Candidate candidate, int runsShort, long amount) {
        OfferModel offer = candidate.offer();
        boolean late = runsShort >= 0 && candidate.day() > runsShort;
        return new Bid(offer, candidate.day(), late, offer.amount(offer.packsFor(amount)));
    }
}
