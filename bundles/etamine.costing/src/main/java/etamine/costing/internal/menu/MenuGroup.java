package etamine.costing.internal.menu;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.MenuReport;
import etamine.costing.internal.menu.EngineeredMenu.Offered;
import etamine.costing.internal.words.Amounts;
import etamine.kitchen.cost.PlateCost;
import etamine.measures.Money;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;

/**
 * Items compared with one another, after M. L. Kasavana and D. I. Smith, Menu Engineering (1982). Both lines are exact
 * fractions, so that a tie is a tie; what lies on a line is low.
 */
final class MenuGroup {
    /** 70 % of an equal share. */
    private static final Ratio EQUAL_SHARE = Ratio.of(7, 10);

    private static final Ratio HUNDRED = Ratio.of(100);
    private static final int PLACES = 2;

    private final String name;
    private final List<Offered> offered;
    private final Currency currency;
    private final long sold;
    private final Money cost;
    private final Money revenue;

    /** A group of which something was sold. */
    MenuGroup(String name, List<Offered> offered, Currency currency) {
        this.name = name;
        this.offered = offered;
        this.currency = currency;
        this.sold = offered.stream().mapToLong(Offered::sold).reduce(0, Math::addExact);
        this.cost = total(PlateCost::cost);
        this.revenue = total(PlateCost::net);
    }

    private Money total(Function<PlateCost, Money> figure) {
        return offered.stream()
                .map(one -> times(figure.apply(plate(one)), one.sold()))
                .reduce(Money.zero(currency), Money::plus);
    }

    private static PlateCost plate(Offered one) {
        return one.cost().plate().orElseThrow();
    }

    private static Money times(Money each, long portions) {
        return new Money(each.amount().multiply(BigDecimal.valueOf(portions)), each.currency());
    }

    private Ratio average() {
        return revenue.minus(cost).toRatio().dividedBy(Ratio.of(sold));
    }

    private Ratio cut() {
        return EQUAL_SHARE.dividedBy(Ratio.of(offered.size()));
    }

    MenuReport.Group group() {
        List<MenuReport.Item> items = offered.stream()
                .map(this::item)
                .sorted(Comparator.comparing(MenuReport.Item::totalContribution)
                        .reversed()
                        .thenComparing(MenuReport.Item::recipe))
                .toList();
        return new MenuReport.Group(
                name,
                items,
                sold,
                Money.of(average(), currency),
                cut().times(HUNDRED).toDecimal(PLACES, RoundingMode.HALF_UP),
                cost,
                revenue,
                Amounts.percent(cost, revenue),
                explained(items));
    }

    private MenuReport.Item item(Offered one) {
        PlateCost plate = plate(one);
        Ratio share = Ratio.of(one.sold()).dividedBy(Ratio.of(sold));
        Ratio leaves = plate.net().minus(plate.cost()).toRatio();
        return new MenuReport.Item(
                one.recipe().id(),
                one.recipe().name(),
                one.sold(),
                share.times(HUNDRED).toDecimal(PLACES, RoundingMode.HALF_UP),
                plate.cost(),
                plate.net(),
                times(plate.cost(), one.sold()),
                times(plate.net(), one.sold()),
                leaves.compareTo(average()) > 0,
                share.compareTo(cut()) > 0,
                plate.foodCostPercent(),
                !one.cost().complete());
    }

    private Explanation explained(List<MenuReport.Item> items) {
        Explanation margin = Explanation.leaf(
                "Average contribution",
                Amounts.text(Money.of(average(), currency)),
                Amounts.text(revenue.minus(cost)) + " over " + sold + " portions; above it a margin is high");
        Explanation popularity = Explanation.leaf(
                "Popularity cut",
                cut().times(HUNDRED).toDecimal(PLACES, RoundingMode.HALF_UP) + " %",
                "70 % of an equal share of " + offered.size() + " items; above it popularity is high");
        Explanation mix = Explanation.of(
                "Food cost weighted by the mix",
                Amounts.percent(cost, revenue).map(percent -> percent + " %").orElse("none"),
                items.stream().map(MenuGroup::weight).toList());
        return Explanation.of("Menu: " + name, sold + " portions", List.of(margin, popularity, mix));
    }

    private static Explanation weight(MenuReport.Item item) {
        return Explanation.leaf(
                        item.name(),
                        Amounts.text(item.totalCost()),
                        item.sold() + " at " + Amounts.text(item.cost()) + ", sold for "
                                + Amounts.text(item.totalRevenue()))
                .about(new Subject("recipe", item.recipe()));
    }
}
