package etamine.costing.internal;

import etamine.base.Problem;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Reads the cost of single recipes out of a reckoning. */
final class CostReport {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int PLACES = 10;

    private final CostState state;
    private final Currency currency;

    CostReport(CostState state, Currency currency) {
        this.state = state;
        this.currency = currency;
    }

    RecipeCost of(CompiledRecipe compiled) {
        Recipe recipe = compiled.recipe();
        Optional<Money> portion = portion(recipe);
        return new RecipeCost(
                recipe.id(),
                Reckoning.money(state.batch(recipe), currency),
                made(compiled),
                portion,
                recipe.menu().flatMap(menu -> portion.map(cost -> plate(menu, cost))),
                missing(recipe),
                warnings(compiled),
                lines(compiled));
    }

    private List<RecipeCost.Made> made(CompiledRecipe compiled) {
        List<RecipeCost.Made> made = new ArrayList<>();
        List<Make> makes = compiled.recipe().makes();
        double rest = state.batch(compiled.recipe());
        for (double credit : compiled.credits()) {
            rest -= credit;
        }
        for (int i = 0; i < makes.size(); i++) {
            Item item = state.items().get(makes.get(i).item());
            double each = (compiled.credits()[i] + rest * compiled.shares()[i]) / compiled.outputs()[i];
            if (item != null && Math.abs(each) <= Double.MAX_VALUE) {
                boolean credited = makes.get(i).credit().isPresent();
                made.add(
                        new RecipeCost.Made(item.id(), makes.get(i).quantity(), Reckoning.price(item, each), credited));
            }
        }
        return made;
    }

    /** The cost of one portion of the main thing made, as this recipe makes it. */
    private Optional<Money> portion(Recipe recipe) {
        if (recipe.makes().isEmpty()) {
            return Optional.empty();
        }
        Make main = recipe.makes().get(0);
        Item item = state.items().get(main.item());
        Optional<Quantity> size = recipe.portion();
        if (size.isEmpty() && main.quantity().unit().isLike(Unit.PORTION)) {
            size = Optional.of(Quantity.of(1, Unit.PORTION));
        }
        if (item == null || size.isEmpty()) {
            return Optional.empty();
        }
        CompiledRecipe compiled = state.recipe(recipe.id()).orElseThrow();
        return Reckoning.convert(item, size.get()) instanceof Conversion.Converted done
                ? made(compiled).stream()
                        .filter(made -> made.item().equals(item.id()))
                        .findFirst()
                        .map(made -> Reckoning.money(perUnit(item, made) * Reckoning.units(done.quantity()), currency))
                : Optional.empty();
    }

    private static double perUnit(Item item, RecipeCost.Made made) {
        UnitPrice price = made.unitCost();
        return price.amount().doubleValue() / Reckoning.units(price.per());
    }

    private PlateCost plate(MenuPrice menu, Money portion) {
        Money cost = new Money(
                portion.amount()
                        .multiply(BigDecimal.ONE.add(menu.qFactorPercent().movePointLeft(2))),
                currency);
        Money net = new Money(
                menu.price()
                        .divide(BigDecimal.ONE.add(menu.taxPercent().movePointLeft(2)), PLACES, RoundingMode.HALF_EVEN),
                currency);
        Optional<BigDecimal> percent = net.signum() == 0
                ? Optional.empty()
                : Optional.of(cost.amount().multiply(HUNDRED).divide(net.amount(), 2, RoundingMode.HALF_UP));
        return new PlateCost(cost, net, percent, net.minus(cost));
    }

    /** The bought items below the recipe that have no price. */
    private List<String> missing(Recipe recipe) {
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

    private List<Problem> warnings(CompiledRecipe compiled) {
        List<Problem> warnings = new ArrayList<>(compiled.problems());
        Recipe recipe = compiled.recipe();
        double credits = 0;
        for (double credit : compiled.credits()) {
            credits += credit;
        }
        if (credits > state.batch(recipe) && missing(recipe).isEmpty()) {
            warnings.add(Problem.warning(
                    "credits-above-cost",
                    "recipes/" + recipe.id(),
                    recipe.name() + ": the credits are more than the batch costs, so what remains costs less than"
                            + " nothing. Lower the credits unless that is meant."));
        }
        for (Use use : recipe.uses()) {
            Item item = state.items().get(use.item());
            if (item != null && !state.isMade(item.id()) && state.quote(item).isEmpty()) {
                String text = state.board()
                        .unusable(item)
                        .map(why -> item.name() + " has a price that cannot be used: " + why)
                        .orElse(item.name() + " has no price; the cost is a lower bound. Write one or add an offer.");
                warnings.add(Problem.warning("missing-price", "ingredients/" + item.id(), text));
            }
        }
        return warnings;
    }

    private List<RecipeCost.Line> lines(CompiledRecipe compiled) {
        List<RecipeCost.Line> lines = new ArrayList<>();
        RecipeCompiler compiler = new RecipeCompiler(state.items());
        List<Use> uses = compiled.recipe().uses();
        for (int i = 0; i < uses.size(); i++) {
            lines.add(line(uses.get(i), compiled.lines()[i], compiler.asPurchased(uses.get(i))));
        }
        return lines;
    }

    private RecipeCost.Line line(Use use, double units, Optional<Quantity> asPurchased) {
        Item item = state.items().get(use.item());
        boolean made = state.isMade(use.item());
        Optional<PriceQuote> quote = item == null || made ? Optional.empty() : state.quote(item);
        Optional<UnitPrice> price = quote.map(PriceQuote::price);
        if (made && item != null) {
            price = Optional.of(Reckoning.price(item, state.unitCost(use.item())));
        }
        Optional<Money> cost = price.isPresent() && !Double.isNaN(units)
                ? Optional.of(Reckoning.money(units * state.unitCost(use.item()), currency))
                : Optional.empty();
        String source = made
                ? "made here" + (state.complete(use.item()) ? "" : ", lower bound")
                : quote.map(PriceQuote::text).orElse("no price");
        return new RecipeCost.Line(use.item(), use.quantity(), use.as(), asPurchased, price, cost, source);
    }
}
