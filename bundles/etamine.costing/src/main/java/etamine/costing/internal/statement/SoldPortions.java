package etamine.costing.internal.statement;

import etamine.costing.Days;
import etamine.costing.Statement;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.covers.Diary;
import etamine.kitchen.covers.Sale;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Portions sold in some days and what they should have cost, at today's costs and prices. */
final class SoldPortions {
    private final Map<String, Long> sold = new TreeMap<>();
    private final List<String> leftOut = new ArrayList<>();
    private final Currency currency;
    private Statement.Ideal ideal;

    SoldPortions(Diary diary, Costs costs, Days days, Currency currency) {
        this.currency = currency;
        this.ideal = new Statement.Ideal(0, Money.zero(currency), Money.zero(currency), false);
        Map<String, Long> all = new TreeMap<>();
        for (Sale sale : diary.sales(days.from(), days.to())) {
            all.merge(sale.recipe(), sale.sold(), Math::addExact);
        }
        all.forEach((recipe, portions) -> costs.recipe(recipe)
                .filter(cost -> each(cost).isPresent())
                .ifPresentOrElse(cost -> add(cost, portions), () -> leftOut.add(recipe)));
    }

    private static Optional<Money> each(RecipeCost cost) {
        return cost.plate().map(PlateCost::cost).or(cost::portion);
    }

    private void add(RecipeCost cost, long portions) {
        sold.put(cost.recipe(), portions);
        Money net = cost.plate().map(PlateCost::net).orElse(Money.zero(currency));
        ideal = new Statement.Ideal(
                ideal.sold() + portions,
                ideal.cost().plus(times(each(cost).orElseThrow(), portions)),
                ideal.sales().plus(times(net, portions)),
                ideal.lowerBound() || !cost.complete());
    }

    private static Money times(Money each, long portions) {
        return new Money(each.amount().multiply(BigDecimal.valueOf(portions)), each.currency());
    }

    Statement.Ideal ideal() {
        return ideal;
    }

    /** Portions by recipe, of those that have a cost. */
    Map<String, Long> sold() {
        return sold;
    }

    /** Recipes that were sold but have no cost of one portion. */
    List<String> leftOut() {
        return leftOut;
    }
}
