package etamine.costing.internal.live;

import etamine.base.Explanation;
import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.Makers;
import etamine.costing.internal.engine.RecipeReuse;
import etamine.costing.internal.engine.Reckoning;
import etamine.costing.internal.rules.ShelvedCostSettings;
import etamine.costing.internal.state.CostState;
import etamine.costing.internal.state.PriceBoard;
import etamine.costing.internal.state.Terms;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.ItemCost;
import etamine.kitchen.cost.PriceOrigin;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.price.PriceSource;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.measures.UnitPrice;
import etamine.storage.Book;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.FieldOption;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/**
 * Reckons the whole book anew whenever something it depends on has moved, keeping the compiled form of every recipe that
 * is still the same.
 */
@Component(service = {Costs.class, LiveCosts.class})
public final class LiveCosts implements Costs {
    private final Book book;
    private final Kitchen kitchen;
    private final Items items;
    private final ShelvedCostSettings settings;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Recipes recipes;

    @Reference(policy = ReferencePolicy.DYNAMIC, fieldOption = FieldOption.REPLACE)
    private volatile List<PriceSource> sources = List.of();

    private Basis basis = new Basis(-1, LocalDate.MIN, List.of(), Map.of());
    private Map<String, CompiledRecipe> compiled = Map.of();
    private CostState state;

    /** What a reckoning stands on; another basis makes another reckoning. */
    private record Basis(long revision, LocalDate day, List<PriceSource> sources, Map<String, Recipe> recipes) {
        boolean is(Basis other) {
            return revision == other.revision
                    && day.equals(other.day)
                    && sources.equals(other.sources)
                    && recipes == other.recipes;
        }
    }

    /** Costs of the open book. */
    @Activate
    public LiveCosts(
            @Reference Book book,
            @Reference Kitchen kitchen,
            @Reference Items items,
            @Reference ShelvedCostSettings settings) {
        this.book = book;
        this.kitchen = kitchen;
        this.items = items;
        this.settings = settings;
        Terms terms = new Terms(currency(), settings.rules(), kitchen.today());
        this.state = new CostState(Map.of(), List.of(), Map.of(), new PriceBoard(List.of()), terms);
    }

    /** Uses these recipes and price sources, as the registry would hand them over. */
    public LiveCosts with(@Nullable Recipes someRecipes, List<PriceSource> someSources) {
        recipes = someRecipes;
        sources = List.copyOf(someSources);
        return this;
    }

    @Override
    public Optional<RecipeCost> recipe(String id) {
        CostState now = state();
        return now.recipe(id).map(new CostReport(now)::of);
    }

    @Override
    public Map<String, RecipeCost> recipes() {
        CostState now = state();
        CostReport report = new CostReport(now);
        Map<String, RecipeCost> costs = new TreeMap<>();
        now.order().forEach(one -> costs.put(one.recipe().id(), report.of(one)));
        return costs;
    }

    @Override
    public Optional<ItemCost> item(String id) {
        CostState now = state();
        Item item = now.items().get(id);
        if (item == null) {
            return Optional.empty();
        }
        if (now.isMade(id)) {
            boolean complete = now.complete(id);
            return Optional.of(
                    new ItemCost(id, Reckoning.price(item, now.unitCost(id)), complete, "what making it costs"));
        }
        return now.quote(item).map(quote -> {
            PriceOrigin origin = PriceOrigin.of(quote, now.terms().today());
            UnitPrice price = Reckoning.price(item, PriceBoard.perUnit(item, quote));
            return new ItemCost(id, price, true, origin.inWords(), Optional.of(origin));
        });
    }

    @Override
    public Optional<Explanation> explain(String recipe) {
        CostState now = state();
        return now.recipe(recipe)
                .map(found -> new CostStory(now, kitchen.house().measures()).of(found));
    }

    /** The recipes of the open book; empty when no module offers them. */
    public Optional<Recipes> recipeGraph() {
        return Optional.ofNullable(recipes);
    }

    /** The price sources in the order they are asked. */
    public List<PriceSource> ranked() {
        return settings.ranked(sources);
    }

    Currency currency() {
        return kitchen.house().currency();
    }

    /** The reckoning of the book as it is now. */
    public synchronized CostState state() {
        @Nullable Recipes known = recipes;
        Map<String, Recipe> all = known == null ? Map.of() : known.all();
        Basis now = new Basis(book.followed(), kitchen.today(), sources, all);
        if (!now.is(basis)) {
            state = reckon(known == null ? List.of() : known.inOrder(), items.all());
            basis = now;
        }
        return state;
    }

    private CostState reckon(List<Recipe> order, Map<String, Item> all) {
        Set<String> changed = items.changes(state.items(), all);
        RecipeReuse reuse = new RecipeReuse(compiled, state.items(), all, changed);
        Stream<Recipe> each = compiled.isEmpty() ? order.parallelStream() : order.stream();
        List<CompiledRecipe> now = each.map(reuse::compile).toList();
        PriceBoard board = new PriceBoard(settings.ranked(sources));
        Terms terms = new Terms(currency(), settings.rules(), kitchen.today());
        if (state.standsOn(now)) {
            return new CostState(all, changed, state, board, terms);
        }
        Map<String, CompiledRecipe> kept = new HashMap<>();
        now.forEach(one -> kept.put(one.recipe().id(), one));
        compiled = kept;
        return new CostState(all, now, Makers.of(order), board, terms);
    }
}
