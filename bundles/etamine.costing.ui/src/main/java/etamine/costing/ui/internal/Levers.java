package etamine.costing.ui.internal;

import etamine.costing.PriceChange;
import etamine.kitchen.cost.ItemCost;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.widgets.Choice;
import etamine.widgets.SliderRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;

/** Everything about the book that can be moved to see what happens, by id. */
final class Levers {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal STEPS = BigDecimal.valueOf(40);
    private static final int PLACES = 6;
    private final CostingParts parts;

    Levers(CostingParts parts) {
        this.parts = parts;
    }

    /** What there is to choose from: prices first, then yields, menu prices, portions, batches and lines. */
    List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        Recipes recipes = parts.recipes().get().orElse(null);
        if (recipes == null) {
            return choices;
        }
        TreeSet<String> bought = new TreeSet<>();
        Map<String, String> prepared = new LinkedHashMap<>();
        for (Recipe recipe : recipes.all().values()) {
            for (Use use : recipe.uses()) {
                bought.add(use.item());
                use.as().ifPresent(as -> prepared.put("yield/" + use.item() + "/" + as, itemName(use) + ": yield"));
            }
        }
        bought.stream()
                .filter(item -> recipes.maker(item).isEmpty())
                .forEach(item ->
                        choices.add(new Choice("price/" + item, parts.items().name(item) + ": price")));
        prepared.forEach((id, label) -> choices.add(new Choice(id, label)));
        recipes.all().values().forEach(recipe -> choices.addAll(ofRecipe(recipe)));
        return choices;
    }

    /** What can be moved about one recipe: its menu price, its portion, what a batch gives, its lines. */
    List<Choice> ofRecipe(Recipe recipe) {
        List<Choice> choices = new ArrayList<>();
        String name = parts.recipeName(recipe.id());
        recipe.menu().ifPresent(menu -> choices.add(new Choice("menu/" + recipe.id(), name + ": menu price")));
        recipe.portion().ifPresent(size -> choices.add(new Choice("portion/" + recipe.id(), name + ": one portion")));
        recipe.makes().stream()
                .findFirst()
                .filter(make -> !make.quantity().equals(Quantity.of(1, Unit.PORTION)))
                .ifPresent(make -> choices.add(new Choice("gives/" + recipe.id(), name + ": what a batch gives")));
        for (int at = 0; at < recipe.uses().size(); at++) {
            choices.add(new Choice(
                    "line/" + at + "/" + recipe.id(), itemName(recipe.uses().get(at)) + " in " + name));
        }
        return choices;
    }

    /** The lever of that id as the book stands; empty where what it moves is no longer there or has no price. */
    Optional<Lever> find(String id) {
        String[] words = id.split("/", 3);
        return switch (words[0]) {
            case "price" -> parts.costs().item(words[1]).map(cost -> price(id, cost));
            case "yield" ->
                parts.items()
                        .find(words[1])
                        .flatMap(item -> item.preparation(words[2]).map(way -> prepared(id, item, way)));
            case "menu" ->
                parts.recipe(words[1]).flatMap(recipe -> recipe.menu().map(menu -> menu(id, recipe, menu)));
            case "portion" ->
                parts.recipe(words[1]).flatMap(recipe -> recipe.portion().map(size -> portion(id, recipe, size)));
            case "gives" ->
                parts.recipe(words[1])
                        .flatMap(recipe -> recipe.makes().stream().findFirst().map(make -> gives(id, recipe, make)));
            case "line" -> parts.recipe(words[2]).flatMap(recipe -> line(id, recipe, Integer.parseInt(words[1])));
            default -> Optional.empty();
        };
    }

    private Lever price(String id, ItemCost cost) {
        UnitPrice now = cost.price();
        String name = parts.items().name(cost.item()) + ", price";
        return new Lever(
                id,
                name,
                "%",
                SliderRow.Range.of("-50", "100", "1", "0"),
                (experiment, percent) -> experiment.withPrice(cost.item(), PriceChange.by(percent)),
                percent -> Figures.both(
                                Figures.price(now),
                                Figures.price(PriceChange.by(percent).of(now)))
                        + "; " + cost.origin().map(parts.figures()::origin).orElse(cost.source()));
    }

    private Lever prepared(String id, Item item, Preparation way) {
        BigDecimal now = way.yield().toDecimal(PLACES, RoundingMode.HALF_UP).multiply(HUNDRED);
        BigDecimal most = now.multiply(new BigDecimal("1.5")).max(HUNDRED).setScale(0, RoundingMode.UP);
        return new Lever(
                id,
                item.name() + ", " + way.name() + ", yield",
                "%",
                new SliderRow.Range(BigDecimal.ONE, most, BigDecimal.ONE, shortened(now)),
                (experiment, percent) -> experiment.withYield(item.id(), way.name(), share(percent)),
                percent -> Figures.both(Figures.percentAsWritten(shortened(now)), Figures.percentAsWritten(percent))
                        + " of what is bought is left after trimming");
    }

    private Lever menu(String id, Recipe recipe, MenuPrice menu) {
        BigDecimal least = menu.price().divide(BigDecimal.valueOf(2), 0, RoundingMode.DOWN);
        BigDecimal most = menu.price().multiply(BigDecimal.valueOf(2)).max(BigDecimal.ONE);
        BigDecimal step = new BigDecimal(menu.price().compareTo(STEPS) > 0 ? "0.50" : "0.10");
        return new Lever(
                id,
                parts.recipeName(recipe.id()) + ", menu price",
                parts.figures().currency(),
                new SliderRow.Range(least, most.setScale(0, RoundingMode.UP), step, menu.price()),
                (experiment, price) -> experiment.withMenuPrice(recipe.id(), price),
                price -> Figures.both(menu.price().toPlainString(), price.toPlainString()) + " for the guest, "
                        + Figures.percentAsWritten(menu.taxPercent()) + " tax in it");
    }

    private Lever portion(String id, Recipe recipe, Quantity size) {
        return amount(
                id,
                parts.recipeName(recipe.id()) + ", one portion",
                size,
                "a portion",
                (experiment, quantity) -> experiment.withPortion(recipe.id(), quantity));
    }

    private Lever gives(String id, Recipe recipe, Make make) {
        return amount(
                id,
                parts.recipeName(recipe.id()) + ", what a batch gives",
                make.quantity(),
                "a batch",
                (experiment, quantity) -> experiment.withGives(recipe.id(), quantity));
    }

    private Optional<Lever> line(String id, Recipe recipe, int at) {
        if (at >= recipe.uses().size()) {
            return Optional.empty();
        }
        Use use = recipe.uses().get(at);
        return Optional.of(amount(
                id,
                itemName(use) + " in " + parts.recipeName(recipe.id()),
                use.quantity(),
                "a batch",
                (experiment, quantity) -> experiment.withLine(recipe.id(), at, quantity)));
    }

    private Lever amount(
            String id,
            String name,
            Quantity now,
            String of,
            BiFunction<etamine.costing.Experiment, Quantity, etamine.costing.Experiment> trial) {
        BigDecimal start = shortened(now.amount().toDecimal(PLACES, RoundingMode.HALF_UP));
        BigDecimal step = roundStep(start.divide(STEPS, PLACES, RoundingMode.HALF_UP));
        BigDecimal most = start.multiply(BigDecimal.valueOf(2)).max(step.multiply(STEPS));
        Unit unit = now.unit();
        return new Lever(
                id,
                name,
                unit.toString(),
                new SliderRow.Range(step, most, step, start),
                (experiment, amount) -> trial.apply(experiment, new Quantity(Ratio.of(amount), unit)),
                amount -> Figures.both(
                                parts.figures().quantity(now),
                                parts.figures().quantity(new Quantity(Ratio.of(amount), unit)))
                        + " " + of);
    }

    private String itemName(Use use) {
        return parts.items().name(use.item()) + use.as().map(as -> ", " + as).orElse("");
    }

    private static Ratio share(BigDecimal percent) {
        return Ratio.of(percent.movePointLeft(2));
    }

    /** 1, 2 or 5 of some power of ten, near what was asked for. */
    static BigDecimal roundStep(BigDecimal wanted) {
        if (wanted.signum() <= 0) {
            return BigDecimal.ONE;
        }
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(wanted.precision() - wanted.scale() - 1);
        for (int factor : new int[] {1, 2, 5}) {
            BigDecimal step = power.multiply(BigDecimal.valueOf(factor));
            if (step.compareTo(wanted) >= 0) {
                return shortened(step);
            }
        }
        return shortened(power.multiply(BigDecimal.TEN));
    }

    private static BigDecimal shortened(BigDecimal value) {
        BigDecimal shortest = value.stripTrailingZeros();
        return shortest.setScale(Math.max(0, shortest.scale()));
    }
}
