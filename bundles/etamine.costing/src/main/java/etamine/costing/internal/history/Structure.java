package etamine.costing.internal.history;

import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.CostGraph;
import etamine.costing.internal.engine.Makers;
import etamine.costing.internal.engine.Reckoning;
import etamine.costing.internal.state.PlateMath;
import etamine.costing.internal.state.PriceBoard;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.MenuPrice;
import etamine.measures.Conversion;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Compiled recipes without prices, to be reckoned with one set of prices or another. */
final class Structure {
    private final Map<String, Item> items;
    private final Map<String, Item> mixed;
    private final List<CompiledRecipe> order;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, String> makers;
    private final CostGraph graph;
    private final Map<Integer, double[]> slopes = new HashMap<>();

    /**
     * Compiled recipes over items.
     *
     * @param mixed of the items, those that are not the same in every structure it may be compared with
     */
    Structure(Map<String, Item> items, Map<String, Item> mixed, List<CompiledRecipe> order) {
        this.items = items;
        this.mixed = mixed;
        this.order = order;
        for (int i = 0; i < order.size(); i++) {
            places.put(order.get(i).recipe().id(), i);
        }
        this.makers = Makers.of(order.stream().map(CompiledRecipe::recipe).toList());
        this.graph = new CostGraph(order, makers);
    }

    /** Whether these recipes over these mixed items come to the very same figures. */
    boolean standsOn(Map<String, Item> otherMixed, List<CompiledRecipe> other) {
        boolean same = order.size() == other.size() && mixed.equals(otherMixed);
        for (int i = 0; same && i < order.size(); i++) {
            same = alike(order.get(i), other.get(i));
        }
        return same;
    }

    private static boolean alike(CompiledRecipe one, CompiledRecipe two) {
        return one == two
                || one.recipe().equals(two.recipe())
                        && Arrays.equals(one.lines(), two.lines())
                        && Arrays.equals(one.outputs(), two.outputs())
                        && Arrays.equals(one.shares(), two.shares())
                        && Arrays.equals(one.credits(), two.credits())
                        && Double.compare(one.portion(), two.portion()) == 0;
    }

    Map<String, Item> items() {
        return items;
    }

    Optional<CompiledRecipe> recipe(String id) {
        return Optional.ofNullable(places.get(id)).map(order::get);
    }

    Optional<CompiledRecipe> makerOf(String item) {
        return Optional.ofNullable(makers.get(item)).flatMap(this::recipe);
    }

    boolean isMade(String item) {
        int number = graph.numberOf(item);
        return number >= 0 && graph.isMade(number);
    }

    /** What everything costs with these prices. */
    CostGraph.Figures compute(Function<Item, Optional<PriceQuote>> quotes) {
        double[] prices = new double[graph.numbers().size()];
        graph.numbers().forEach((id, number) -> prices[number] = graph.isMade(number) ? 0 : perUnit(id, quotes));
        return graph.compute(prices);
    }

    /** What a quote comes to per reckoning unit; not a number where there is none or it cannot be converted. */
    double perUnit(String id, Function<Item, Optional<PriceQuote>> quotes) {
        Item item = items.get(id);
        return item == null
                ? Double.NaN
                : quotes.apply(item)
                        .filter(quote -> Reckoning.convert(item, quote.price().per()) instanceof Conversion.Converted)
                        .map(quote -> PriceBoard.perUnit(item, quote))
                        .orElse(Double.NaN);
    }

    /** The cost of one portion with allowances; not a number where the recipe is not there or has no portion. */
    double plate(String id, MenuPrice menu, CostGraph.Figures figures) {
        Integer place = places.get(id);
        return place == null
                ? Double.NaN
                : PlateMath.withAllowances(menu, order.get(place).portionOf(figures.batch()[place], true));
    }

    /** The cost of one portion without allowances. */
    double portion(String id, CostGraph.Figures figures) {
        Integer place = places.get(id);
        return place == null ? Double.NaN : order.get(place).portionOf(figures.batch()[place], true);
    }

    boolean complete(String id, CostGraph.Figures figures) {
        Integer place = places.get(id);
        return place != null && figures.batchComplete()[place];
    }

    /** By how much a portion with allowances moves when one reckoning unit of a bought item costs one more. */
    double slope(String id, MenuPrice menu, String item) {
        Integer place = places.get(id);
        int number = graph.numberOf(item);
        if (place == null || number < 0) {
            return 0;
        }
        double[] batches = slopes.computeIfAbsent(number, graph::slope);
        double portion = order.get(place).portionOf(batches[place], false);
        return portion * (1 + menu.qFactorPercent().doubleValue() / 100);
    }
}
