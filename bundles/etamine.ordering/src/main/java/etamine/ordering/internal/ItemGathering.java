package etamine.ordering.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.order.OnOrder;
import etamine.kitchen.par.Par;
import etamine.kitchen.stock.Lot;
import etamine.kitchen.stock.StockLevel;
import etamine.kitchen.use.ExpectedUse.DayUse;
import etamine.measures.Conversion;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.ordering.PlanTerms;
import etamine.ordering.internal.plan.Batch;
import etamine.ordering.internal.plan.Grain;
import etamine.ordering.internal.plan.ItemModel;
import etamine.ordering.internal.plan.ItemModel.Wanted;
import etamine.ordering.internal.plan.PlanModel;
import etamine.ordering.internal.plan.PlanWords;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gathers what is known of one item at a time. */
final class ItemGathering {
    private final Neighbours neighbours;
    private final PlanTerms terms;
    private final Currency currency;
    private final List<String> notes;
    private final Map<String, StockLevel> levels;
    private final Map<String, List<OnOrder>> onOrder = new HashMap<>();

    ItemGathering(Gathering gathering, ShelfOrders orders, List<String> notes) {
        this.neighbours = gathering.neighbours();
        this.terms = gathering.terms();
        this.currency = gathering.currency();
        this.notes = notes;
        this.levels = neighbours.stock().map(stock -> stock.levels()).orElse(Map.of());
        orders.onOrder()
                .forEach(line -> onOrder.computeIfAbsent(line.item(), i -> new ArrayList<>())
                        .add(line));
    }

    /**
     * What is gathered for.
     *
     * @param neighbours who is asked
     * @param terms the plan's terms
     * @param currency what is paid in
     */
    record Gathering(Neighbours neighbours, PlanTerms terms, Currency currency) {}

    /** The item's model; empty for what nobody sells and the kitchen makes itself or does not keep on a shelf. */
    Optional<ItemModel> item(String id, Optional<Par> par, List<DayUse> uses) {
        Optional<Item> known = neighbours.item(id);
        Quantity example = par.map(Par::par).orElseGet(() -> uses.get(0).quantity());
        Unit unit = Counting.unit(known, example);
        Grain grain = new Grain(unit);
        Offers offers = new Offers(neighbours, known, grain, terms);
        offers.gather(id);
        if (offers.models().isEmpty() && neighbours.isMade(id)) {
            return Optional.empty();
        }
        if (offers.models().isEmpty() && par.isEmpty() && offShelf(id)) {
            note(neighbours.itemName(id)
                    + " is not planned: nobody offers it, it has no par and it was never in stock. "
                    + "If it has to be bought, enter an offer or a par.");
            return Optional.empty();
        }
        Counter counter = new Counter(id, known, grain);
        Wanted wanted = new Wanted(
                use(uses, counter),
                par(par, counter),
                limit(par.flatMap(Par::orderAt), counter),
                limit(par.flatMap(Par::capacity), counter));
        return Optional.of(
                new ItemModel(id, grain, wanted, batches(id, counter, offers), offers.models(), offers.obstacle()));
    }

    /** Water from the main is used and never kept; only where both modules are there can that be told. */
    private boolean offShelf(String id) {
        return neighbours.catalogue().isPresent()
                && neighbours.stock().isPresent()
                && !levels.containsKey(id)
                && !onOrder.containsKey(id);
    }

    /** Counts quantities of one item in grains, noting what cannot be converted. */
    private final class Counter {
        private final String id;
        private final Optional<Item> item;
        private final Grain grain;

        Counter(String id, Optional<Item> item, Grain grain) {
            this.id = id;
            this.item = item;
            this.grain = grain;
        }

        long of(Quantity quantity) {
            Conversion conversion = Counting.count(item, quantity, grain.countIn());
            if (conversion instanceof Conversion.Converted counted) {
                return grain.of(counted.quantity());
            }
            note(neighbours.itemName(id) + ": " + quantity + " does not count. "
                    + ((Conversion.Missing) conversion).text());
            return 0;
        }
    }

    private void note(String text) {
        if (!notes.contains(text)) {
            notes.add(text);
        }
    }

    private long[] use(List<DayUse> uses, Counter counter) {
        long[] days = new long[terms.days() + PlanModel.LOOK_AHEAD];
        for (DayUse use : uses) {
            int day = day(use.date());
            days[day] = Math.addExact(days[day], counter.of(use.quantity()));
        }
        return days;
    }

    private long[] par(Optional<Par> par, Counter counter) {
        if (par.isEmpty()) {
            return new long[0];
        }
        long[] days = new long[terms.days() + PlanModel.LOOK_AHEAD];
        for (int day = 0; day < days.length; day++) {
            days[day] = counter.of(par.get().on(terms.from().plusDays(day).getDayOfWeek()));
        }
        return days;
    }

    private static long limit(Optional<Quantity> limit, Counter counter) {
        return limit.map(counter::of).orElse(Long.MAX_VALUE);
    }

    private List<Batch> batches(String id, Counter counter, Offers offers) {
        List<Batch> batches = new ArrayList<>();
        Optional.ofNullable(levels.get(id))
                .ifPresent(level -> level.lots().forEach(lot -> batches.add(lot(lot, counter))));
        onOrder.getOrDefault(id, List.of()).forEach(line -> batches.add(coming(line, counter, offers)));
        batches.removeIf(batch -> batch.grains() <= 0);
        return batches;
    }

    private Batch lot(Lot lot, Counter counter) {
        int last = lot.useBy().map(this::day).orElse(Batch.KEEPS);
        Optional<Money> value = lot.unitCost()
                .filter(cost -> cost.per().unit().isLike(lot.quantity().unit()))
                .map(cost -> Money.of(cost.cost(lot.quantity()), currency));
        return new Batch(Batch.ON_HAND, counter.of(lot.quantity()), last, "what is on the shelf", value);
    }

    private Batch coming(OnOrder line, Counter counter, Offers offers) {
        int day = day(line.deliver());
        if (day < 0) {
            note("What was to come from " + neighbours.supplierName(line.supplier()) + " on "
                    + PlanWords.day(line.deliver()) + " has not been received; it counts as coming on the first day.");
        }
        int arrives = Math.max(0, day);
        // Which of the supplier's articles comes is not known here: the one that keeps shortest is the safe guess.
        int last = offers.models().stream()
                .filter(offer -> offer.offer().supplier().equals(line.supplier()) && offer.holdsOn(arrives))
                .mapToInt(offer -> offer.lastDay(terms.from(), arrives))
                .min()
                .orElse(Batch.KEEPS);
        return new Batch(
                arrives,
                counter.of(line.quantity()),
                last,
                "the delivery of " + PlanWords.day(terms.from().plusDays(arrives)),
                Optional.empty());
    }

    private int day(LocalDate date) {
        return Math.toIntExact(ChronoUnit.DAYS.between(terms.from(), date));
    }
}
