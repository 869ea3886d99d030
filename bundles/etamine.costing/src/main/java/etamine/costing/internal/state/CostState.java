package etamine.costing.internal.state;

import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.CostGraph;
import etamine.costing.internal.state.PriceBoard.Priced;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.Recipe;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One consistent reckoning of the whole book. Immutable; plates and work are reckoned when first asked for. */
public final class CostState {
    private final Map<String, Item> items;
    private final Map<String, String> makers;
    private final Map<String, Integer> places;
    private final List<CompiledRecipe> order;
    private final CostGraph graph;
    private final PriceBoard board;
    private final Terms terms;
    private final @Nullable Item[] numbered;
    private final @Nullable Priced[] priced;
    private final double[] prices;
    private final CostGraph.Figures figures;
    private volatile @Nullable Work work;
    private volatile @Nullable Plates plates;

    public CostState(
            Map<String, Item> items,
            List<CompiledRecipe> order,
            Map<String, String> makers,
            PriceBoard board,
            Terms terms) {
        this.items = items;
        this.makers = makers;
        this.order = order;
        this.graph = new CostGraph(order, makers);
        this.board = board;
        this.terms = terms;
        this.places = new LinkedHashMap<>();
        for (int i = 0; i < order.size(); i++) {
            places.put(order.get(i).recipe().id(), i);
        }
        this.numbered = new Item[graph.numbers().size()];
        graph.numbers().forEach((id, number) -> numbered[number] = items.get(id));
        this.priced = new Priced[numbered.length];
        this.prices = prices(priced);
        this.figures = graph.compute(prices);
    }

    /** The same recipes with other prices; {@code changed} are the items that are not the same as before. */
    public CostState(Map<String, Item> items, Set<String> changed, CostState before, PriceBoard board, Terms terms) {
        this.items = items;
        this.makers = before.makers;
        this.order = before.order;
        this.graph = before.graph;
        this.places = before.places;
        this.board = board;
        this.terms = terms;
        this.numbered = before.numbered.clone();
        for (String id : changed) {
            int number = graph.numberOf(id);
            if (number >= 0) {
                numbered[number] = items.get(id);
            }
        }
        this.priced = new Priced[numbered.length];
        this.prices = prices(before.priced);
        this.figures = graph.compute(prices);
    }

    /** Whether these are the very recipes it was reckoned from, so that only prices can differ. */
    public boolean standsOn(List<CompiledRecipe> now) {
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
        double[] found = new double[numbered.length];
        for (int number = 0; number < found.length; number++) {
            Item item = numbered[number];
            Priced price = item == null || graph.isMade(number)
                    ? null
                    : board.priced(item, last[number]).orElse(null);
            priced[number] = price;
            found[number] = price == null ? Double.NaN : price.perUnit();
        }
        return found;
    }

    public Map<String, Item> items() {
        return items;
    }

    public List<CompiledRecipe> order() {
        return order;
    }

    public CostGraph graph() {
        return graph;
    }

    public Terms terms() {
        return terms;
    }

    Map<String, String> makers() {
        return makers;
    }

    /** What each item costs per reckoning unit, by its number in the graph; a copy. */
    public double[] pricesByNumber() {
        return prices.clone();
    }

    /** Where a recipe stands in the graph; -1 for one that is not in it. */
    public int place(String recipe) {
        return places.getOrDefault(recipe, -1);
    }

    public Optional<CompiledRecipe> recipe(String id) {
        return Optional.ofNullable(places.get(id)).map(order::get);
    }

    public double batch(Recipe recipe) {
        return figures.batch()[places.get(recipe.id())];
    }

    public double batch(int place) {
        return figures.batch()[place];
    }

    /** Whether nothing in the batch at that place is missing. */
    public boolean batchComplete(int place) {
        return figures.batchComplete()[place];
    }

    /** The recipe that decides what an item costs. */
    public Optional<Recipe> makerOf(String item) {
        return Optional.ofNullable(makers.get(item)).flatMap(this::recipe).map(CompiledRecipe::recipe);
    }

    public boolean isMade(String item) {
        int number = graph.numberOf(item);
        return number >= 0 && graph.isMade(number);
    }

    /** Whether everything below the item has a price. */
    public boolean complete(String item) {
        int number = graph.numberOf(item);
        return number >= 0 && figures.complete()[number];
    }

    /** Cost of one reckoning unit; 0 where nothing is known. */
    public double unitCost(String item) {
        int number = graph.numberOf(item);
        return number >= 0 ? figures.unitCost()[number] : 0;
    }

    /** The quote a bought item is reckoned with. */
    public Optional<PriceQuote> quote(Item item) {
        int number = graph.numberOf(item.id());
        return number >= 0 ? Optional.ofNullable(priced[number]).map(Priced::quote) : board.quote(item);
    }

    public PriceBoard board() {
        return board;
    }

    /** The work in everything, when the kitchen costs it. */
    public Optional<Work> labour() {
        if (!terms.rules().labour().on()) {
            return Optional.empty();
        }
        Work known = work;
        if (known == null) {
            known = new Work(order, graph, terms.rules().labour(), places);
            work = known;
        }
        return Optional.of(known);
    }

    /** The recipes on the menu. */
    public Plates plates() {
        Plates known = plates;
        if (known == null) {
            known = Plates.of(this);
            plates = known;
        }
        return known;
    }
}
