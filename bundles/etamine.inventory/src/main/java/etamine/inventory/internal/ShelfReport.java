package etamine.inventory.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.inventory.StockLine;
import etamine.kitchen.order.OnOrder;
import etamine.kitchen.order.Orders;
import etamine.kitchen.par.Par;
import etamine.kitchen.par.Pars;
import etamine.kitchen.stock.Lot;
import etamine.kitchen.stock.StockLevel;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Stock against par: what is there, on its way and wanted, without pars or orders where nobody keeps them. */
@Component(service = ShelfReport.class)
public final class ShelfReport {
    private final LotStock stock;
    private final KnownItems items;
    private final PlaceShelf places;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Pars pars;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Orders orders;

    /** Reports on that stock. */
    @Activate
    public ShelfReport(@Reference LotStock stock, @Reference KnownItems items, @Reference PlaceShelf places) {
        this.stock = stock;
        this.items = items;
        this.places = places;
    }

    List<StockLine> now(LocalDate day) {
        return lines(day, stock.now());
    }

    List<StockLine> at(LocalDate day, Instant at) {
        return lines(day, stock.at(at));
    }

    /** What lies in one place, with the stock of the whole house for what is short. */
    List<StockLine> in(LocalDate day, String place) {
        Map<String, ItemStock> there = stock.in(place);
        return lines(day, stock.now()).stream()
                .filter(line -> there.containsKey(line.item()))
                .map(line ->
                        here(line, Optional.ofNullable(there.get(line.item())).orElseThrow()))
                .toList();
    }

    private static StockLine here(StockLine line, ItemStock there) {
        List<Lot> lots = there.level().lots();
        return new StockLine(
                line.item(),
                line.name(),
                there.level().onHand(),
                line.onOrder(),
                line.par(),
                line.shortBy(),
                there.level().value(),
                there.valuedBy(),
                lots,
                lots.stream().flatMap(lot -> lot.useBy().stream()).min(Comparator.naturalOrder()));
    }

    private List<StockLine> lines(LocalDate day, Map<String, ItemStock> levels) {
        Map<String, Par> wanted = Optional.ofNullable(pars).map(Pars::all).orElse(Map.of());
        List<OnOrder> coming = Optional.ofNullable(orders).map(Orders::onOrder).orElse(List.of());
        TreeSet<String> ids = new TreeSet<>(levels.keySet());
        ids.addAll(wanted.keySet());
        Map<String, List<Quantity>> dueOf = new HashMap<>();
        coming.forEach(order ->
                dueOf.computeIfAbsent(order.item(), item -> new ArrayList<>()).add(order.quantity()));
        ids.addAll(dueOf.keySet());
        ids.removeIf(id -> gone(id, levels) && !wanted.containsKey(id) && !dueOf.containsKey(id));
        List<StockLine> lines = new ArrayList<>();
        for (String id : ids) {
            Optional<Quantity> par = Optional.ofNullable(wanted.get(id)).map(level -> level.on(day.getDayOfWeek()));
            lines.add(line(id, Optional.ofNullable(levels.get(id)), par, dueOf.getOrDefault(id, List.of())));
        }
        lines.sort(Comparator.comparing(StockLine::name, String.CASE_INSENSITIVE_ORDER));
        return lines;
    }

    /** Whether nothing is left of an item that nobody lists any more, such as one merged into another. */
    private boolean gone(String id, Map<String, ItemStock> levels) {
        return items.refuses(id)
                && Optional.ofNullable(levels.get(id))
                        .filter(stocked -> !stocked.level().lots().isEmpty()
                                || !stocked.level().onHand().isZero()
                                || !stocked.apart().isEmpty())
                        .isEmpty();
    }

    private StockLine line(String id, Optional<ItemStock> known, Optional<Quantity> par, List<Quantity> due) {
        ItemMeasure measure = items.measure(id);
        Quantity onHand = known.map(ItemStock::level)
                .map(StockLevel::onHand)
                .orElseGet(() -> Quantity.zero(
                        measure.countIn(par.or(() -> due.stream().findFirst()).orElse(Quantity.zero(Unit.EA)))));
        Unit unit = onHand.unit();
        Quantity onOrder = due.stream()
                .flatMap(quantity -> measure.like(quantity, unit).stream())
                .reduce(Quantity.zero(unit), Quantity::plus);
        Optional<Quantity> level = par.flatMap(quantity -> measure.like(quantity, unit));
        Optional<Quantity> shortBy = level.map(
                        quantity -> quantity.minus(onHand).minus(onOrder))
                .map(quantity -> quantity.signum() < 0 ? Quantity.zero(unit) : quantity);
        List<Lot> lots = known.map(ItemStock::level).map(StockLevel::lots).orElse(List.of());
        return new StockLine(
                id,
                items.name(id),
                onHand,
                onOrder,
                level,
                shortBy,
                known.flatMap(stocked -> stocked.level().value()),
                known.map(ItemStock::valuedBy).orElse(""),
                lots,
                lots.stream().flatMap(lot -> lot.useBy().stream()).min(Comparator.naturalOrder()));
    }

    /** What lots below zero come to; empty when there are none. */
    Optional<Quantity> owing(String item) {
        return Optional.ofNullable(stock.now().get(item)).map(ItemStock::level).stream()
                .flatMap(level -> level.lots().stream())
                .map(Lot::quantity)
                .filter(quantity -> quantity.signum() < 0)
                .reduce(Quantity::plus)
                .map(Quantity::negate);
    }

    /** Where an item's level and value come from. */
    Explanation explain(String item) {
        Optional<ItemStock> known = Optional.ofNullable(stock.now().get(item));
        List<Explanation> parts = new ArrayList<>();
        known.ifPresent(stocked -> {
            stocked.level().lots().forEach(lot -> parts.add(lot(lot)));
            stocked.apart()
                    .forEach(lot -> parts.add(Explanation.leaf(
                            "Not counted in", lot.quantity().toString(), "a measure of the item is missing")));
            stocked.level()
                    .value()
                    .ifPresent(value -> parts.add(
                            Explanation.leaf("Worth", value.rounded() + " " + value.currency(), stocked.valuedBy())));
        });
        String level = known.map(stocked -> stocked.level().onHand().toString()).orElse("nothing ever entered");
        return Explanation.of(items.name(item) + " on hand", level, parts).about(new Subject("item", item));
    }

    private Explanation lot(Lot lot) {
        String where = lot.place().isEmpty() ? "no place" : places.name(lot.place());
        String mark = lot.lot().isEmpty() ? "" : ", lot " + lot.lot();
        String source = lot.useBy().map(day -> "use by " + day).orElse("no date marked")
                + lot.unitCost().map(cost -> ", cost " + cost).orElse(", cost not known");
        return Explanation.leaf(where + mark, lot.quantity().toString(), source);
    }
}
