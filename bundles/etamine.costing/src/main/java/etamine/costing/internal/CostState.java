package etamine.costing.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.Recipe;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One consistent reckoning of the whole book. Immutable. */
final class CostState {
    private final Map<String, Item> items;
    private final Map<String, String> makers;
    private final Map<String, Integer> places;
    private final List<CompiledRecipe> order;
    private final CostGraph graph;
    private final PriceBoard board;
    private final Map<String, PriceQuote> quotes = new HashMap<>();
    private final CostGraph.Figures figures;

    CostState(Map<String, Item> items, List<CompiledRecipe> order, Map<String, String> makers, PriceBoard board) {
        this.items = items;
        this.makers = makers;
        this.order = order;
        this.graph = new CostGraph(order, makers);
        this.board = board;
        this.places = new LinkedHashMap<>();
        for (int i = 0; i < order.size(); i++) {
            places.put(order.get(i).recipe().id(), i);
        }
        this.figures = graph.compute(prices());
    }

    /** The same recipes with other prices. */
    CostState(Map<String, Item> items, CostState before, PriceBoard board) {
        this.items = items;
        this.makers = before.makers;
        this.order = before.order;
        this.graph = before.graph;
        this.places = before.places;
        this.board = board;
        this.figures = graph.compute(prices());
    }

    /** Whether these are the very recipes it was reckoned from, so that only prices can differ. */
    boolean standsOn(List<CompiledRecipe> now) {
        if (order.size() != now.size()) {
            return false;
        }
        for (int i = 0; i < now.size(); i++) {
            if (order.get(i) != now.get(i)) {
                return false;
            }
        }
        return true;
    }

    private double[] prices() {
        double[] prices = new double[graph.numbers().size()];
        Arrays.fill(prices, Double.NaN);
        graph.numbers().forEach((id, number) -> {
            Item item = items.get(id);
            if (item != null && !graph.isMade(number)) {
                board.quote(item).ifPresent(quote -> {
                    quotes.put(id, quote);
                    prices[number] = PriceBoard.perUnit(item, quote);
                });
            }
        });
        return prices;
    }

    Map<String, Item> items() {
        return items;
    }

    List<CompiledRecipe> order() {
        return order;
    }

    Optional<CompiledRecipe> recipe(String id) {
        return Optional.ofNullable(places.get(id)).map(order::get);
    }

    double batch(Recipe recipe) {
        return figures.batch()[places.get(recipe.id())];
    }

    /** The recipe that decides what an item costs. */
    Optional<Recipe> makerOf(String item) {
        return Optional.ofNullable(makers.get(item)).flatMap(this::recipe).map(CompiledRecipe::recipe);
    }

    boolean isMade(String item) {
        int number = graph.numberOf(item);
        return number >= 0 && graph.isMade(number);
    }

    /** Whether everything below the item has a price. */
    boolean complete(String item) {
        int number = graph.numberOf(item);
        return number >= 0 && figures.complete()[number];
    }

    /** Cost of one reckoning unit; 0 where nothing is known. */
    double unitCost(String item) {
        int number = graph.numberOf(item);
        return number >= 0 ? figures.unitCost()[number] : 0;
    }

    /** The quote a bought item is reckoned with. */
    Optional<PriceQuote> quote(Item item) {
        return graph.numberOf(item.id()) >= 0 ? Optional.ofNullable(quotes.get(item.id())) : board.quote(item);
    }

    PriceBoard board() {
        return board;
    }
}
