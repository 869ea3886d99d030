package etamine.costing.internal.history;

import etamine.costing.CostHistory;
import etamine.costing.DatedCost;
import etamine.costing.DatedPrice;
import etamine.costing.Moved;
import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.CostGraph;
import etamine.costing.internal.engine.RecipeCompiler;
import etamine.costing.internal.engine.Reckoning;
import etamine.costing.internal.live.LiveCosts;
import etamine.costing.internal.state.CostState;
import etamine.costing.internal.state.PlateMath;
import etamine.costing.internal.state.Plates;
import etamine.costing.internal.state.PriceBoard;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The book as it stood on earlier days, reckoned like the book now. The last answer is kept while nothing changes. */
@Component
public final class BookHistory implements CostHistory {
    private final LiveCosts costs;
    private final Items items;
    private final Kitchen kitchen;
    private @Nullable Answer last;

    private record Answer(CostState state, LocalDate day, Moved moved) {}

    /** The history of the open book. */
    @Activate
    public BookHistory(@Reference LiveCosts costs, @Reference Items items, @Reference Kitchen kitchen) {
        this.costs = costs;
        this.items = items;
        this.kitchen = kitchen;
    }

    @Override
    public synchronized Moved since(LocalDate day) {
        CostState state = costs.state();
        Answer known = last;
        if (known == null || known.state != state || !known.day.equals(day)) {
            known = new Answer(state, day, moved(state, day));
            last = known;
        }
        return known.moved;
    }

    private Moved moved(CostState state, LocalDate day) {
        PastPrices past = new PastPrices(costs.ranked(), state.terms().today());
        List<Recipe> order = state.order().stream().map(CompiledRecipe::recipe).toList();
        Standpoint now = Standpoint.of(state.items(), order, state::quote);
        Standpoint then = Standpoint.of(items.asOf(before(day)), orderAsOf(before(day)), once(past, day.minusDays(1)));
        Mixture mixture = new Mixture(then, now, state.order());
        List<Item> bought = state.items().values().stream()
                .filter(item -> !state.isMade(item.id()))
                .toList();
        List<Moved.PlateMove> plates = new PlateMoves(mixture, state.terms())
                .moves().stream().map(move -> written(move, day)).toList();
        return new Moved(day, PriceMoves.since(day, bought, past), plates);
    }

    private Moved.PlateMove written(Moved.PlateMove move, LocalDate day) {
        Optional<LocalDate> written = costs.recipeGraph()
                .flatMap(recipes -> recipes.firstWritten(move.recipe()))
                .map(at -> at.atZone(zone()).toLocalDate())
                .filter(on -> !on.isBefore(day));
        return new Moved.PlateMove(
                move.recipe(),
                move.before(),
                move.now(),
                move.effects(),
                move.causes(),
                move.lowerBound(),
                written,
                move.foodCostPercent(),
                move.target());
    }

    /** The last moment before a day. */
    private Instant before(LocalDate day) {
        return day.atStartOfDay(zone()).toInstant().minusMillis(1);
    }

    private ZoneId zone() {
        return kitchen.house().zone();
    }

    private List<Recipe> orderAsOf(Instant at) {
        return costs.recipeGraph()
                .map((Recipes recipes) -> recipes.inOrderAsOf(at))
                .orElse(List.of());
    }

    /** The price of each item on a day, or its first one after, looked up once. */
    private static Function<Item, Optional<PriceQuote>> once(PastPrices past, LocalDate day) {
        Map<String, Optional<PriceQuote>> known = new HashMap<>();
        return item -> known.computeIfAbsent(item.id(), id -> past.atOrFirst(item, day));
    }

    @Override
    public List<DatedPrice> prices(String id) {
        Item item = costs.state().items().get(id);
        if (item == null) {
            return List.of();
        }
        PastPrices past = new PastPrices(costs.ranked(), kitchen.today());
        return past.course(item).stream()
                .map(quote -> new DatedPrice(
                        quote.asOf().orElseThrow(),
                        Reckoning.price(item, PriceBoard.perUnit(item, quote)),
                        quote.source(),
                        quote.text()))
                .toList();
    }

    @Override
    public List<DatedCost> course(String recipe, int weeks) {
        CostState state = costs.state();
        PastPrices past = new PastPrices(costs.ranked(), state.terms().today());
        List<DatedCost> course = new ArrayList<>();
        for (int week = weeks; week > 0; week--) {
            on(recipe, state.terms().today().minusWeeks(week), state, past).ifPresent(course::add);
        }
        Plates.Plate now = state.plates().byId().get(recipe);
        if (now != null) {
            course.add(new DatedCost(state.terms().today(), now.cost(), !now.complete()));
        }
        return course;
    }

    /** What a plate cost at the beginning of a day. */
    private Optional<DatedCost> on(String id, LocalDate day, CostState state, PastPrices past) {
        Map<String, Item> then = items.asOf(before(day));
        RecipeCompiler compiler = new RecipeCompiler(then);
        List<CompiledRecipe> order =
                orderAsOf(before(day)).stream().map(compiler::compile).toList();
        Structure structure = new Structure(then, Map.of(), order);
        boolean known = Reach.of(id, structure).items().stream()
                .map(then::get)
                .anyMatch(
                        item -> item != null && past.at(item, day.minusDays(1)).isPresent());
        CostGraph.Figures figures = structure.compute(once(past, day.minusDays(1)));
        double portion = structure.portion(id, figures);
        return !known || Double.isNaN(portion) || Double.isInfinite(portion)
                ? Optional.empty()
                : structure
                        .recipe(id)
                        .flatMap(found -> found.recipe().menu())
                        .map(menu -> new DatedCost(
                                day,
                                new PlateMath(state.terms()).of(menu, portion, Double.NaN),
                                !structure.complete(id, figures)));
    }
}
