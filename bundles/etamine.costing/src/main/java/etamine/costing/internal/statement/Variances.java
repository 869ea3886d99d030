package etamine.costing.internal.statement;

import etamine.costing.Statement.Variance;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.item.Items;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.StockFlow;
import etamine.kitchen.stock.StockFlow.Amount;
import etamine.measures.Conversion;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/** Sets what left the shelf of each bought ingredient against what should have. */
final class Variances {
    private final Costs costs;
    private final Items items;
    private final Currency currency;
    private final List<String> apart = new ArrayList<>();

    Variances(Costs costs, Items items, Currency currency) {
        this.costs = costs;
        this.items = items;
        this.currency = currency;
    }

    /** The variances, the largest in money first. */
    List<Variance> of(Map<String, StockFlow> flows, Map<String, Quantity> should, Predicate<String> bought) {
        TreeSet<String> ids = new TreeSet<>(should.keySet());
        flows.keySet().stream().filter(bought).forEach(ids::add);
        List<Variance> variances = new ArrayList<>();
        for (String id : ids) {
            one(id, Optional.ofNullable(flows.get(id)), Optional.ofNullable(should.get(id)))
                    .filter(line -> !line.used().isZero()
                            || !line.should().isZero()
                            || !line.money().isZero())
                    .ifPresent(variances::add);
        }
        variances.sort(
                Comparator.comparing((Variance line) -> line.money().toRatio().abs())
                        .reversed()
                        .thenComparing(Variance::item));
        return variances;
    }

    /** Ingredients whose shelf and recipes measure in units that nothing links. */
    List<String> apart() {
        return apart;
    }

    private Optional<Variance> one(String id, Optional<StockFlow> flow, Optional<Quantity> needed) {
        Quantity none =
                Quantity.zero(flow.map(known -> known.opening().quantity().unit())
                        .or(() -> needed.map(Quantity::unit))
                        .orElseThrow());
        Optional<Quantity> should = needed.isEmpty() ? Optional.of(none) : needed.flatMap(need -> in(id, need, none));
        if (should.isEmpty()) {
            apart.add(id);
            return Optional.empty();
        }
        Amount used = flow.map(ShelfFigures::used).orElse(new Amount(none, Optional.empty()));
        Quantity wasted = flow.map(
                        known -> known.by(MovementKind.WASTED).quantity().negate())
                .orElse(none);
        return Optional.of(line(id, used, should.get(), wasted));
    }

    private Optional<Quantity> in(String id, Quantity quantity, Quantity like) {
        return quantity.unit().isLike(like.unit())
                ? Optional.of(quantity.in(like.unit()))
                : items.find(id)
                        .map(item -> item.converter().convert(quantity, like.unit()))
                        .filter(Conversion.Converted.class::isInstance)
                        .map(Conversion::orThrow);
    }

    private Variance line(String id, Amount used, Quantity should, Quantity wasted) {
        Money cost = used.value().orElse(Money.zero(currency));
        Optional<UnitPrice> price = costs.item(id)
                .map(known -> known.price())
                .filter(known -> known.per().unit().isLike(should.unit()));
        Optional<Money> ideal = price.map(known -> Money.of(known.cost(should), currency));
        Ratio standard = price.map(known -> known.cost(used.quantity())).orElse(cost.toRatio());
        Money byPrice = used.value().isEmpty() ? Money.zero(currency) : cost.minus(Money.of(standard, currency));
        Money byUse = Money.of(standard, currency).minus(ideal.orElse(Money.zero(currency)));
        return new Variance(id, items.name(id), used.quantity(), should, wasted, cost, ideal, byUse, byPrice);
    }
}
