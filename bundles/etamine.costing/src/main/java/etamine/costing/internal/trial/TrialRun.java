package etamine.costing.internal.trial;

import etamine.costing.Experiment;
import etamine.costing.PriceChange;
import etamine.costing.Trial;
import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.CostGraph;
import etamine.costing.internal.engine.Overlay;
import etamine.costing.internal.engine.RecipeCompiler;
import etamine.costing.internal.engine.Reckoning;
import etamine.costing.internal.state.CostState;
import etamine.costing.internal.state.PlateMath;
import etamine.costing.internal.state.Plates;
import etamine.costing.internal.state.Work;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Conversion;
import etamine.measures.UnitPrice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reckons one experiment on the arrays of a reckoning: what differs is compiled anew, the rest is one pass. */
final class TrialRun {
    private final CostState state;
    private final TrialMaking making;
    private final List<String> notes = new ArrayList<>();
    private final Map<Integer, CompiledRecipe> changed = new HashMap<>();
    private final double[] prices;
    private final PlateMath math;

    TrialRun(CostState state, Experiment experiment) {
        this.state = state;
        this.math = new PlateMath(state.terms());
        this.making = new TrialMaking(state, experiment);
        this.prices = state.pricesByNumber();
        notes.addAll(making.notes());
        experiment.prices().forEach(this::price);
        compile();
    }

    private void price(String id, PriceChange change) {
        Item item = state.items().get(id);
        if (item == null) {
            notes.add("Nobody knows “" + id + "”; add it to the list first.");
        } else if (state.isMade(id)) {
            notes.add(item.name() + " is made here: change what goes into it.");
        } else {
            TrialPrice.of(state, item, change)
                    .ifPresentOrElse(
                            price -> price(item, price),
                            () -> notes.add(item.name() + " has no price to move by a percentage; write one first."));
        }
    }

    private void price(Item item, UnitPrice price) {
        int number = state.graph().numberOf(item.id());
        Conversion per = Reckoning.convert(making.items().getOrDefault(item.id(), item), price.per());
        if (price.amount().signum() < 0) {
            notes.add(item.name() + ": a price cannot be less than nothing.");
        } else if (per instanceof Conversion.Missing missing) {
            notes.add(item.name() + ": a price per " + price.per() + " cannot be used: " + missing.text());
        } else if (number >= 0) {
            prices[number] = price.amount().doubleValue() / Reckoning.units(per.orThrow());
        }
    }

    private void compile() {
        Set<Integer> places = new TreeSet<>();
        making.recipes().keySet().forEach(id -> places.add(state.place(id)));
        making.items()
                .keySet()
                .forEach(id -> places.addAll(state.graph().usersOf(state.graph().numberOf(id))));
        if (places.isEmpty()) {
            return;
        }
        RecipeCompiler compiler = new RecipeCompiler(new Overlay<>(making.items(), state.items()));
        for (int place : places) {
            CompiledRecipe before = state.order().get(place);
            Recipe recipe = making.recipes().getOrDefault(before.recipe().id(), before.recipe());
            CompiledRecipe after = compiler.compile(recipe);
            if (after.problems().size() > before.problems().size()) {
                after.problems().stream()
                        .filter(problem -> !before.problems().contains(problem))
                        .forEach(problem -> notes.add(problem.text()));
            } else {
                changed.put(place, after);
            }
        }
    }

    /** The figures of every plate; those the experiment does not reach are the very ones of the book. */
    Trial trial() {
        CostGraph graph = state.graph().with(changed);
        CostGraph.Figures figures = graph.compute(prices);
        Optional<double[]> work = state.labour().map(labour -> labour.carriedBy(graph));
        Optional<double[]> workNow = state.labour().map(Work::batches);
        List<Plates.Plate> before = state.plates().list();
        List<Trial.Plate> plates = new ArrayList<>(before.size());
        for (Plates.Plate plate : before) {
            int place = plate.place();
            double labour = work.map(batches -> batches[place]).orElse(Double.NaN);
            boolean reached = figures.batch()[place] != state.batch(place)
                    || workNow.isPresent() && workNow.get()[place] != labour
                    || !changed.isEmpty() && changed.containsKey(place);
            PlateCost then = reached ? reckoned(plate, figures.batch()[place], labour) : plate.cost();
            plates.add(new Trial.Plate(plate.recipe(), plate.cost(), then, !figures.batchComplete()[place]));
        }
        return new Trial(plates, notes);
    }

    private PlateCost reckoned(Plates.Plate plate, double batch, double work) {
        CompiledRecipe compiled =
                changed.getOrDefault(plate.place(), state.order().get(plate.place()));
        MenuPrice menu = compiled.recipe().menu().orElse(plate.menu());
        double portion = compiled.portionOf(batch, true);
        double labour = compiled.portionOf(work, false);
        boolean same =
                portion == plate.portion() && Double.compare(labour, plate.labour()) == 0 && menu.equals(plate.menu());
        return same || !(Math.abs(portion) <= Double.MAX_VALUE) ? plate.cost() : math.of(menu, portion, labour);
    }

    TrialMaking making() {
        return making;
    }

    List<String> notes() {
        return notes;
    }
}
