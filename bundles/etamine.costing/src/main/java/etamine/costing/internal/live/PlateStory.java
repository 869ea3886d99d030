package etamine.costing.internal.live;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.internal.state.CostState;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Money;
import etamine.measures.UnitPrice;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells how the figures of a plate come about. */
final class PlateStory {
    private final CostState state;

    PlateStory(CostState state) {
        this.state = state;
    }

    /** The plate's figures in the order they are reckoned; {@code bound} stands before costs that are lower bounds. */
    List<Explanation> of(Recipe recipe, PlateCost plate, String bound) {
        List<Explanation> parts = new ArrayList<>();
        parts.add(new Explanation(
                "Plate cost", bound + text(plate.cost()), "", parts(recipe, plate.parts()), Optional.empty()));
        parts.add(Explanation.leaf("Net price", text(plate.net()), "menu price without tax"));
        plate.foodCostPercent()
                .ifPresent(percent -> parts.add(Explanation.leaf(
                        "Food cost",
                        bound + percent + " %",
                        "cost over net price"
                                + plate.target()
                                        .map(target -> ", target " + target.toPlainString() + " %")
                                        .orElse("")
                                + (plate.overTarget() ? ": above it" : ""))));
        parts.add(Explanation.leaf("Contribution", text(plate.contribution()), "net price less cost"));
        plate.labour()
                .ifPresent(work -> parts.add(Explanation.leaf(
                        "Hands-on work", text(work), "its own steps and those of everything made for it")));
        plate.prime()
                .ifPresent(prime ->
                        parts.add(Explanation.leaf("Prime cost", bound + text(prime), "plate cost and work together")));
        return parts;
    }

    private List<Explanation> parts(Recipe recipe, PlateCost.Parts parts) {
        List<Explanation> told = new ArrayList<>();
        told.add(Explanation.leaf("Food, line by line", text(parts.food()), ""));
        recipe.menu()
                .map(MenuPrice::qFactorPercent)
                .filter(percent -> percent.signum() != 0)
                .ifPresent(percent -> told.add(Explanation.leaf(
                        "Q factor, " + percent.toPlainString() + " %",
                        text(parts.qFactorShare()),
                        "a share for ingredients too small to measure")));
        if (!parts.qFactorAmount().isZero()) {
            told.add(Explanation.leaf(
                    "Q factor, an amount", text(parts.qFactorAmount()), "for what accompanies every plate"));
        }
        if (!parts.packaging().isZero()) {
            told.add(Explanation.leaf(
                    "Packaging and garnish", text(parts.packaging()), "an allowance for each portion"));
        }
        return told;
    }

    /** The plate with a drink. */
    Explanation with(RecipeCost.WithDrink drink) {
        List<Explanation> parts = new ArrayList<>();
        parts.add(Explanation.leaf("Drink alone", text(drink.poured().cost()), "cost of one pour"));
        drink.poured()
                .foodCostPercent()
                .ifPresent(percent -> parts.add(
                        Explanation.leaf("Pour cost", percent + " %", "cost of the pour over its net price")));
        parts.add(Explanation.leaf("Cost of both", (drink.complete() ? "" : "at least ") + text(drink.cost()), ""));
        parts.add(Explanation.leaf("Net price of both", text(drink.net()), ""));
        drink.costPercent()
                .ifPresent(percent -> parts.add(
                        Explanation.leaf("Food cost of both", percent + " %", "cost of both over their net price")));
        String name =
                state.recipe(drink.drink()).map(found -> found.recipe().name()).orElse(drink.drink());
        String level = drink.level().isEmpty() ? "" : " (" + drink.level() + ")";
        return new Explanation(
                "With " + name + level,
                text(drink.contribution()),
                "left of both",
                parts,
                Optional.of(new Subject("cost", drink.drink())));
    }

    /** The work in a batch. */
    Explanation of(RecipeCost.Labour labour) {
        List<Explanation> parts = new ArrayList<>();
        parts.add(Explanation.leaf("Its own steps", text(labour.own()), "hands-on time at the station's rate"));
        parts.add(Explanation.leaf(
                "What is made for it", text(labour.batch().minus(labour.own())), "its share of their work"));
        labour.portion().ifPresent(portion -> parts.add(Explanation.leaf("In one portion", text(portion), "")));
        return Explanation.of("Hands-on work of one batch", text(labour.batch()), parts);
    }

    String text(Money money) {
        return money.rounded() + " " + state.terms().currency().getCurrencyCode();
    }

    static String text(UnitPrice price) {
        return price.amount()
                        .setScale(4, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString() + " per " + price.per();
    }
}
