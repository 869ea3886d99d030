package etamine.recipes.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Ratio;
import java.math.RoundingMode;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the slate says about a recipe or one of its lines. */
final class RecipeStory {
    private final Kitchenware ware;
    private final RecipesModel model;

    RecipeStory(Kitchenware ware, RecipesModel model) {
        this.ware = ware;
        this.model = model;
    }

    Explanation recipe(Recipe recipe) {
        List<Explanation> parts = new ArrayList<>();
        model.cost(recipe.id()).ifPresent(cost -> parts.add(cost(cost)));
        recipe.makes().stream()
                .findFirst()
                .flatMap(make -> model.words().find(make.item()))
                .ifPresent(item -> parts.add(item.allergens().explained()));
        recipe.keeps()
                .ifPresent(keeps -> parts.add(
                        Explanation.leaf("Keeps", days(keeps), "this kitchen's own figure; local rules decide")));
        parts.add(usedIn(recipe));
        String makes = recipe.makes().stream()
                .findFirst()
                .map(Make::quantity)
                .map(model::text)
                .orElse("nothing");
        return Explanation.of(recipe.name(), "makes " + makes, parts).about(new Subject("recipe", recipe.id()));
    }

    private static String days(Period keeps) {
        Period whole = keeps.normalized();
        if (whole.toTotalMonths() > 0) {
            return whole.toString();
        }
        return whole.getDays() + (whole.getDays() == 1 ? " day" : " days");
    }

    private static Explanation cost(RecipeCost cost) {
        List<Explanation> parts = new ArrayList<>();
        cost.portion()
                .ifPresent(portion -> parts.add(
                        Explanation.leaf("One portion", portion.rounded().toString(), "")));
        cost.plate().ifPresent(plate -> {
            parts.add(Explanation.leaf("Plate cost", plate.cost().rounded().toString(), "with the Q factor"));
            plate.foodCostPercent()
                    .ifPresent(percent -> parts.add(
                            Explanation.leaf("Food cost", percent.toPlainString() + " %", "of the price without tax")));
        });
        if (!cost.missing().isEmpty()) {
            parts.add(Explanation.leaf(
                    "Without a price", String.join(", ", cost.missing()), "so all this is a lower bound"));
        }
        return Explanation.of("One batch costs", cost.batch().rounded().toString(), parts)
                .about(new Subject("cost", cost.recipe()));
    }

    private Explanation usedIn(Recipe recipe) {
        Set<Recipe> users = recipe.makes().stream()
                .flatMap(make -> ware.recipes().usersOf(make.item()).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return Explanation.of(
                "Used in",
                users.isEmpty() ? "no other recipe" : users.size() + (users.size() == 1 ? " recipe" : " recipes"),
                users.stream()
                        .map(user -> Explanation.leaf(user.name(), "", "").about(new Subject("recipe", user.id())))
                        .toList());
    }

    /** How a line comes to its quantity as purchased. */
    Explanation line(Recipe recipe, int line) {
        Use use = recipe.uses().get(line);
        List<Explanation> parts = new ArrayList<>();
        Optional<Item> item = model.words().find(use.item());
        item.ifPresent(known -> trim(use, known, parts));
        cost(recipe, line).ifPresent(parts::add);
        String title = model.shown(use.item()) + use.as().map(as -> ", " + as).orElse("");
        return Explanation.of(title, model.text(use.quantity()) + " " + use.basis(), parts)
                .about(subject(use.item()));
    }

    private void trim(Use use, Item item, List<Explanation> parts) {
        use.as()
                .flatMap(item::preparation)
                .map(Preparation::yield)
                .ifPresent(yield -> parts.add(Explanation.leaf(
                        "Yield", percent(yield), "of the weight as purchased, written on " + item.name())));
        if (use.asPurchased(item) instanceof Conversion.Converted bought) {
            String through = bought.path().isEmpty()
                    ? ""
                    : bought.path().stream()
                            .map(measure -> measure.of() + " = " + measure.is())
                            .collect(Collectors.joining("; "));
            parts.add(Explanation.leaf("As purchased", model.text(bought.quantity()), through));
        } else if (use.asPurchased(item) instanceof Conversion.Missing missing) {
            parts.add(Explanation.leaf("As purchased", "not known", missing.text()));
        }
        parts.add(item.allergens().explained());
    }

    private Optional<Explanation> cost(Recipe recipe, int line) {
        return model.cost(recipe.id())
                .filter(known -> line < known.lines().size())
                .map(known -> known.lines().get(line))
                .map(known -> Explanation.leaf(
                        "Cost",
                        known.cost().map(money -> money.rounded().toString()).orElse("no price known"),
                        known.source()));
    }

    private Subject subject(String item) {
        return ware.recipes()
                .maker(item)
                .map(maker -> new Subject("recipe", maker.id()))
                .orElseGet(() -> new Subject("item", item));
    }

    private static String percent(Ratio share) {
        return share.times(Ratio.of(100))
                        .toDecimal(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString() + " %";
    }
}
