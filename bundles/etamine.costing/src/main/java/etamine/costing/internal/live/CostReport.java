package etamine.costing.internal.live;

import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.RecipeCompiler;
import etamine.costing.internal.engine.Reckoning;
import etamine.costing.internal.state.CostState;
import etamine.costing.internal.state.PlateMath;
import etamine.costing.internal.state.Plates;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.PriceOrigin;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.PairedDrink;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Reads the cost of single recipes out of a reckoning. */
final class CostReport {
    private final CostState state;
    private final Currency currency;
    private final CostWarnings warnings;

    CostReport(CostState state) {
        this.state = state;
        this.currency = state.terms().currency();
        this.warnings = new CostWarnings(state);
    }

    RecipeCost of(CompiledRecipe compiled) {
        Recipe recipe = compiled.recipe();
        List<String> missing = missing(recipe);
        Optional<PlateCost> plate = plate(recipe.id()).map(Plates.Plate::cost);
        return new RecipeCost(
                recipe.id(),
                money(state.batch(recipe)),
                made(compiled),
                portion(compiled.portionOf(state.batch(recipe), true)),
                plate,
                missing,
                warnings.of(compiled, missing.isEmpty()),
                lines(compiled),
                labour(compiled),
                plate.map(found -> drinks(recipe, found)).orElse(List.of()),
                state.batchComplete(state.place(recipe.id())));
    }

    private Optional<Plates.Plate> plate(String recipe) {
        return Optional.ofNullable(state.plates().byId().get(recipe));
    }

    private Money money(double value) {
        return Reckoning.money(value, currency);
    }

    private Optional<Money> portion(double value) {
        return Math.abs(value) <= Double.MAX_VALUE ? Optional.of(money(value)) : Optional.empty();
    }

    private Optional<RecipeCost.Labour> labour(CompiledRecipe compiled) {
        Recipe recipe = compiled.recipe();
        return state.labour()
                .map(work -> new RecipeCost.Labour(
                        money(work.batch(recipe)),
                        portion(compiled.portionOf(work.batch(recipe), false)),
                        money(work.ownOf(recipe))));
    }

    private List<RecipeCost.WithDrink> drinks(Recipe recipe, PlateCost plate) {
        List<RecipeCost.WithDrink> together = new ArrayList<>();
        for (PairedDrink drink : recipe.drinks()) {
            plate(drink.recipe()).ifPresent(found -> together.add(with(plate, drink, found)));
        }
        return together;
    }

    private static RecipeCost.WithDrink with(PlateCost plate, PairedDrink drink, Plates.Plate poured) {
        Money cost = plate.cost().plus(poured.cost().cost());
        Money net = plate.net().plus(poured.cost().net());
        return new RecipeCost.WithDrink(
                drink.recipe(),
                drink.level(),
                poured.cost(),
                cost,
                net,
                PlateMath.percent(cost, net),
                net.minus(cost),
                poured.complete());
    }

    private List<RecipeCost.Made> made(CompiledRecipe compiled) {
        List<RecipeCost.Made> made = new ArrayList<>();
        List<Make> makes = compiled.recipe().makes();
        for (int i = 0; i < makes.size(); i++) {
            Item item = state.items().get(makes.get(i).item());
            double each = compiled.each(i, state.batch(compiled.recipe()), true);
            if (item != null && Math.abs(each) <= Double.MAX_VALUE) {
                boolean credited = makes.get(i).credit().isPresent();
                made.add(new RecipeCost.Made(
                        item.id(),
                        makes.get(i).quantity(),
                        Reckoning.price(item, each),
                        credited,
                        compiled.byMarketValue() && !credited));
            }
        }
        return made;
    }

    /** The bought items below the recipe that have no price. */
    List<String> missing(Recipe recipe) {
        TreeSet<String> missing = new TreeSet<>();
        collect(recipe, missing, new TreeSet<>());
        return List.copyOf(missing);
    }

    private void collect(Recipe recipe, TreeSet<String> missing, TreeSet<String> seen) {
        for (Use use : recipe.uses()) {
            if (!seen.add(use.item()) || state.complete(use.item())) {
                continue;
            }
            if (!state.isMade(use.item())) {
                missing.add(use.item());
            } else {
                state.makerOf(use.item()).ifPresent(maker -> collect(maker, missing, seen));
            }
        }
    }

    private List<RecipeCost.Line> lines(CompiledRecipe compiled) {
        List<RecipeCost.Line> lines = new ArrayList<>();
        RecipeCompiler compiler = new RecipeCompiler(state.items());
        List<Use> uses = compiled.recipe().uses();
        for (int i = 0; i < uses.size(); i++) {
            boolean known = !Double.isNaN(compiled.lines()[i]);
            Optional<Quantity> bought = known ? compiler.asPurchased(uses.get(i)) : Optional.empty();
            lines.add(line(uses.get(i), compiled.lines()[i], bought));
        }
        return lines;
    }

    private RecipeCost.Line line(Use use, double units, Optional<Quantity> asPurchased) {
        Item item = state.items().get(use.item());
        boolean made = state.isMade(use.item());
        Optional<PriceQuote> quote = item == null || made ? Optional.empty() : state.quote(item);
        Optional<UnitPrice> price = made && item != null
                ? Optional.of(Reckoning.price(item, state.unitCost(use.item())))
                : quote.map(PriceQuote::price);
        Optional<Money> cost = price.isPresent() && !Double.isNaN(units)
                ? Optional.of(money(units * state.unitCost(use.item())))
                : Optional.empty();
        Optional<PriceOrigin> origin =
                quote.map(found -> PriceOrigin.of(found, state.terms().today()));
        String source = made
                ? "made here" + (state.complete(use.item()) ? "" : ", lower bound")
                : origin.map(PriceOrigin::inWords).orElse("no price");
        return new RecipeCost.Line(use.item(), use.quantity(), use.as(), asPurchased, price, cost, source, origin);
    }
}
