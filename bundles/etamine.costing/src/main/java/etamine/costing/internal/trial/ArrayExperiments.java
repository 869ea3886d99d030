package etamine.costing.internal.trial;

import etamine.costing.Experiment;
import etamine.costing.Experiments;
import etamine.costing.PriceChange;
import etamine.costing.Trial;
import etamine.costing.internal.live.LiveCosts;
import etamine.costing.internal.state.CostState;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemWriter;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.RecipeWriter;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import etamine.storage.Book;
import etamine.storage.Transaction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Experiments on the arrays of the live reckoning; accepted ones are written by the modules that own the documents. */
@Component
public final class ArrayExperiments implements Experiments {
    private final Book book;
    private final LiveCosts costs;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable ItemWriter items;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable RecipeWriter recipes;

    /** Experiments on the costs of that book. */
    @Activate
    public ArrayExperiments(@Reference Book book, @Reference LiveCosts costs) {
        this.book = book;
        this.costs = costs;
    }

    /** Writes through these, as the registry would hand them over. */
    ArrayExperiments with(@Nullable ItemWriter someItems, @Nullable RecipeWriter someRecipes) {
        items = someItems;
        recipes = someRecipes;
        return this;
    }

    @Override
    public Trial reckon(Experiment experiment) {
        return new TrialRun(costs.state(), experiment).trial();
    }

    @Override
    public List<String> accept(Experiment experiment) {
        CostState state = costs.state();
        TrialRun run = new TrialRun(state, experiment);
        if (!run.notes().isEmpty()) {
            throw new IllegalArgumentException(String.join(" ", run.notes()));
        }
        Map<String, UnitPrice> prices = prices(state, experiment.prices());
        Set<Recipe> changed = new LinkedHashSet<>(run.making().recipes().values());
        book.write(label(experiment), transaction -> {
            writeItems(transaction, prices, experiment.yields());
            for (Recipe recipe : changed) {
                writer().write(transaction, recipe);
            }
            return changed.size();
        });
        return overruled(state, prices);
    }

    private RecipeWriter writer() {
        return Optional.ofNullable(recipes)
                .orElseThrow(() -> new IllegalArgumentException(
                        "Without the recipes module nothing can be written on recipes; start it first."));
    }

    private void writeItems(
            Transaction transaction, Map<String, UnitPrice> prices, Map<Experiment.Prepared, Ratio> yields) {
        Set<String> ids = new LinkedHashSet<>(prices.keySet());
        yields.keySet().forEach(prepared -> ids.add(prepared.item()));
        if (ids.isEmpty()) {
            return;
        }
        ItemWriter writer = Optional.ofNullable(items)
                .orElseThrow(() -> new IllegalArgumentException(
                        "Without the ingredient list no price or yield can be written; start it first."));
        for (String id : ids) {
            Map<String, Ratio> own = new LinkedHashMap<>();
            yields.forEach((prepared, yield) -> {
                if (prepared.item().equals(id)) {
                    own.put(prepared.preparation(), yield);
                }
            });
            writer.write(transaction, id, Optional.ofNullable(prices.get(id)), own);
        }
    }

    private static Map<String, UnitPrice> prices(CostState state, Map<String, PriceChange> changes) {
        Map<String, UnitPrice> prices = new LinkedHashMap<>();
        changes.forEach((id, change) -> {
            Item item = state.items().get(id);
            if (item != null) {
                TrialPrice.of(state, item, change).ifPresent(price -> prices.put(id, price));
            }
        });
        return prices;
    }

    /** A written price that another source is asked before: it stands in the book and moves no cost yet. */
    private List<String> overruled(CostState before, Map<String, UnitPrice> prices) {
        List<String> notes = new ArrayList<>();
        CostState now = costs.state();
        prices.forEach((id, price) -> {
            Item item = before.items().get(id);
            Optional<PriceQuote> quote = Optional.ofNullable(item).flatMap(now::quote);
            quote.filter(asked -> !asked.source().equals("written"))
                    .ifPresent(asked ->
                            notes.add("The price of " + now.items().get(id).name() + " is written, but " + asked.text()
                                    + " is asked first, so costs stay as they are until that changes."));
        });
        return notes;
    }

    private static String label(Experiment experiment) {
        int changes = experiment.prices().size()
                + experiment.yields().size()
                + experiment.gives().size()
                + experiment.portions().size()
                + experiment.lines().size()
                + experiment.menuPrices().size();
        return "Accept " + (changes == 1 ? "a change" : changes + " changes") + " tried out in costing";
    }
}
