package etamine.costing.internal.statement;

import etamine.costing.Days;
import etamine.costing.Statement;
import etamine.costing.Statements;
import etamine.costing.WeekCost;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.covers.Diary;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.stock.StockFlow;
import etamine.kitchen.stock.StockFlows;
import etamine.measures.Money;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Statements from the ledger's flows and the diary's sales, as far as either is there. */
@Component
public final class ShelfStatements implements Statements {
    private static final int WEEK = 7;

    private final Costs costs;
    private final Items items;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Recipes recipes;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Diary diary;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable StockFlows stock;

    /** Statements by those costs. */
    @Activate
    public ShelfStatements(@Reference Costs costs, @Reference Items items, @Reference Kitchen kitchen) {
        this.costs = costs;
        this.items = items;
        this.kitchen = kitchen;
    }

    @Override
    public Statement of(Days days) {
        StatementNotes notes = new StatementNotes(items);
        Optional<SoldPortions> sold = sold(days);
        Optional<ShelfFigures> shelf = shelf(days);
        Optional<Statement.Actual> actual =
                shelf.filter(figures -> !figures.isEmpty()).map(ShelfFigures::actual);
        Optional<Statement.Ideal> ideal = sold.map(SoldPortions::ideal).filter(found -> found.sold() > 0);
        notes.without(diary, sold, stock, actual);
        shelf.ifPresent(notes::doubtful);
        List<Statement.Variance> variances = ideal.isPresent() && actual.isPresent()
                ? variances(sold.orElseThrow().sold(), shelf.orElseThrow().flows(), notes)
                : List.of();
        return new StatementStory(kitchen.house().measures())
                .told(new Statement(days, actual, ideal, variances, notes.all(), StatementStory.NOTHING));
    }

    private Optional<SoldPortions> sold(Days days) {
        return Optional.ofNullable(diary).map(kept -> new SoldPortions(kept, costs, days, currency()));
    }

    private Optional<ShelfFigures> shelf(Days days) {
        return Optional.ofNullable(stock)
                .map(flows -> flows.between(
                        beginning(days.from()), beginning(days.to().plusDays(1))))
                .map(flows -> new ShelfFigures(flows, currency()));
    }

    private Currency currency() {
        return kitchen.house().currency();
    }

    private Instant beginning(LocalDate day) {
        return day.atStartOfDay(kitchen.house().zone()).toInstant();
    }

    private List<Statement.Variance> variances(
            Map<String, Long> sold, Map<String, StockFlow> flows, StatementNotes notes) {
        Optional<Recipes> graph = Optional.ofNullable(recipes);
        if (graph.isEmpty()) {
            return List.of();
        }
        Requirement requirement = new IdealUse(graph.get(), items).of(sold, flows);
        Variances reckoned = new Variances(costs, items, currency());
        List<Statement.Variance> variances = reckoned.of(
                flows, requirement.bought(), id -> graph.get().maker(id).isEmpty());
        notes.unfollowed(requirement.problems());
        notes.apart(reckoned.apart());
        notes.unpriced(variances);
        return variances;
    }

    @Override
    public List<WeekCost> weeks(LocalDate last, int weeks) {
        List<WeekCost> found = new ArrayList<>();
        for (int back = weeks - 1; back >= 0; back--) {
            LocalDate to = last.minusDays((long) back * WEEK);
            week(new Days(to.minusDays(WEEK - 1), to)).ifPresent(found::add);
        }
        return found;
    }

    private Optional<WeekCost> week(Days days) {
        Optional<Statement.Ideal> ideal = sold(days).map(SoldPortions::ideal).filter(found -> found.sold() > 0);
        return ideal.map(found -> {
            Optional<Money> actual = shelf(days)
                    .filter(figures -> !figures.isEmpty())
                    .map(figures -> figures.actual().costOfFoodSold());
            return new WeekCost(days, found.sales(), found.cost(), actual);
        });
    }
}
