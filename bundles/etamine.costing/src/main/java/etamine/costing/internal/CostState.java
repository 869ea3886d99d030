package etamine.costing.internal;

import etamine.costing.internal.PriceBoard.Priced;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.Recipe;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One consistent reckoning of the whole book. Immutable. */
final class CostState {
    private final Map<String, Item> items;
    private final Map<String, String> makers;
    private final Map<String, Integer> places;
    private final List<CompiledRecipe> order;
    private final CostGraph graph;
    private final PriceBoard board;
    private final @Nullable Item[] numbered;
    private final @Nullable Priced[] priced;
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
        this.numbered = new Item[graph.numbers().size()];
        graph.numbers().forEach((id, number) -> numbered[number] = items.get(id));
        this.priced = new Priced[numbered.length];
        this.figures = graph.compute(prices(priced));
    }

    /** The same recipes with other prices; {@code changed} are the items that are not the same as before. */
    CostState(Map<String, Item> items, Set<String> changed, CostState before, PriceBoard board) {
        this.items = items;
        this.makers = before.makers;
        this.order = before.order;
        this.graph = before.graph;
        this.places = before.places;
        this.board = board;
        this.numbered = before.numbered.clone();
        for (String id : changed) {
            int number = graph.numberOf(id);
            if (number >= 0) {
                numbered[number] = items.get(id);
            }
        }
        this.priced = new Priced[numbered.length];
        this.figures = graph.compute(prices(before.priced));
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

    private double[] prices(@Nullable Priced[] last) {
        double[] prices = new double[numbered.length];
        for (int number = 0; number < prices.length; number++) {
            Item item = numbered[number];
            Priced found = item == null || graph.isMade(number)
                    ? null
                    : board.priced(item, last[number]).orElse(null);
            priced[number] = found;
            prices[number] = found == null ? Double.NaN : found.perUnit();
        }
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
        int number = graph.numberOf(item.id());
        return number >= 0 ? Optional.ofNullable(priced[number]).map(Priced::quote) : board.quote(item);
    }

    PriceBoard board() {
        return board;
    }
}
