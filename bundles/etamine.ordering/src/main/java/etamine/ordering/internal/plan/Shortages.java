package etamine.ordering.internal.plan;

import etamine.ordering.OrderPlan.Shortfall;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What stays missing: use that the shelf cannot meet, or a par that is not reached at the last delivery that could
 * still bring it.
 */
final class Shortages {
    private final PlanModel model;
    private final PlanWords words;
    private final Purchases purchases;

    Shortages(PlanModel model, PlanWords words, Purchases purchases) {
        this.model = model;
        this.words = words;
        this.purchases = purchases;
    }

    Optional<Shortfall> of(ItemModel item, Course course) {
        int day = course.firstUnmet(model.days());
        if (day >= 0) {
            return Optional.of(shortfall(item, day, course.unmetBefore(model.days()), useReasons(item, course, day)));
        }
        return item.wanted().hasPar() && !lastsUntilNext(item, course) ? belowPar(item, course) : Optional.empty();
    }

    /** Whether nobody can bring it within the plan, but what is there meets the use expected until somebody can. */
    private boolean lastsUntilNext(ItemModel item, Course course) {
        OptionalInt next = model.suppliers().values().stream()
                .flatMap(supplier -> supplier.slots().stream())
                .filter(slot -> offeredFor(item, slot))
                .mapToInt(Slot::day)
                .min();
        return next.isPresent()
                && next.getAsInt() >= model.days()
                && item.wanted().use(0, next.getAsInt()) > 0
                && course.unmetBefore(next.getAsInt()) == 0;
    }

    /** A par counts as missed when it is reached on no day from the first delivery that can bring the item. */
    private Optional<Shortfall> belowPar(ItemModel item, Course course) {
        List<Slot> slots = slots(item);
        int first = slots.isEmpty() ? 0 : slots.get(0).day();
        long least = Long.MAX_VALUE;
        int day = first;
        for (int t = first; t < model.days(); t++) {
            long there = course.opening()[t];
            long missing = there > item.wanted().orderAt() ? 0 : item.wanted().par()[t] - there;
            day = missing < least ? t : day;
            least = Math.min(least, missing);
        }
        return least > 0 ? Optional.of(shortfall(item, day, least, parReasons(item, slots))) : Optional.empty();
    }

    private Shortfall shortfall(ItemModel item, int day, long missing, List<String> why) {
        return new Shortfall(item.item(), model.date(day), item.grain().quantity(missing), why);
    }

    private List<String> parReasons(ItemModel item, List<Slot> slots) {
        List<String> why = new ArrayList<>(List.of("It stays below its par."));
        supplyReason(item, slots, model.days()).ifPresent(why::add);
        if (why.size() == 1) {
            capacityReason(item).ifPresent(why::add);
        }
        return why;
    }

    private List<String> useReasons(ItemModel item, Course course, int day) {
        List<String> why = new ArrayList<>();
        why.add("It runs short by " + words.amount(item, course.unmet()[day]) + " on " + words.day(day) + ".");
        List<Slot> slots = slots(item);
        Optional<String> supply = supplyReason(item, slots, day);
        supply.ifPresent(why::add);
        if (supply.isEmpty()) {
            levelReason(item, slots, day).ifPresent(why::add);
            capacityReason(item).ifPresent(why::add);
        }
        return why;
    }

    private Optional<String> supplyReason(ItemModel item, List<Slot> slots, int day) {
        if (!item.obstacle().isEmpty()) {
            return Optional.of(item.obstacle());
        }
        Optional<String> refused = refused(item);
        if (refused.isPresent()) {
            return refused;
        }
        if (slots.isEmpty()) {
            return Optional.of("No delivery within these days can still be ordered from anybody who offers it.");
        }
        return slots.get(0).day() > day
                ? Optional.of("The first delivery that can still be ordered comes on "
                        + words.day(slots.get(0).day()) + ".")
                : Optional.empty();
    }

    private Optional<String> refused(ItemModel item) {
        return purchases.refused().entrySet().stream()
                .filter(entry -> offeredFor(item, entry.getKey()))
                .findFirst()
                .map(entry -> "The order to " + name(entry.getKey().supplier()) + " for "
                        + words.day(entry.getKey().day()) + " would come to " + entry.getValue()
                        + ", less than the minimum of "
                        + model.suppliers()
                                .get(entry.getKey().supplier())
                                .supplier()
                                .minimum() + ".");
    }

    private Optional<String> levelReason(ItemModel item, List<Slot> slots, int day) {
        Slot before = slots.get(0);
        for (Slot slot : slots) {
            before = slot.day() <= day ? slot : before;
        }
        int next = model.suppliers().get(before.supplier()).next(before.day());
        long level = item.wanted().level(before.day(), next);
        long expected = item.wanted().use(before.day(), next);
        if (item.wanted().hasPar() && level < expected) {
            return Optional.of("Its par of " + words.amount(item, level) + " is less than the "
                    + words.amount(item, expected) + " expected before " + words.day(next) + ".");
        }
        return item.wanted().orderAt() < Long.MAX_VALUE
                ? Optional.of("It is ordered only when down to "
                        + words.amount(item, item.wanted().orderAt()) + ".")
                : Optional.empty();
    }

    private Optional<String> capacityReason(ItemModel item) {
        return item.wanted().capacity() < Long.MAX_VALUE
                ? Optional.of(
                        "There is room for " + words.amount(item, item.wanted().capacity()) + " only.")
                : Optional.empty();
    }

    private List<Slot> slots(ItemModel item) {
        return model.slots().stream()
                .filter(slot -> !purchases.refused().containsKey(slot) && offeredFor(item, slot))
                .toList();
    }

    private static boolean offeredFor(ItemModel item, Slot slot) {
        return item.offers().stream()
                .anyMatch(offer -> offer.offer().supplier().equals(slot.supplier()) && offer.holdsOn(slot.day()));
    }

    private String name(String supplier) {
        return model.suppliers().get(supplier).supplier().name();
    }
}
