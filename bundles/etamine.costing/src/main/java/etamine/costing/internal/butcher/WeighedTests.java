package etamine.costing.internal.butcher;

import etamine.costing.ButcherSheet;
import etamine.costing.ButcherTests;
import etamine.costing.internal.words.LikelyIds;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Sheets from the weights of recipes and the engine's costs. */
@Component
public final class WeighedTests implements ButcherTests {
    private final Costs costs;
    private final Items items;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Recipes recipes;

    /** Sheets by those costs. */
    @Activate
    public WeighedTests(@Reference Costs costs, @Reference Items items, @Reference Kitchen kitchen) {
        this.costs = costs;
        this.items = items;
        this.kitchen = kitchen;
    }

    private Map<String, Recipe> all() {
        return Optional.ofNullable(recipes).map(Recipes::all).orElse(Map.of());
    }

    @Override
    public List<String> recipes() {
        List<Recipe> open = all().values().stream()
                .filter(recipe -> !recipe.standing().archived())
                .toList();
        Stream<Recipe> breakdowns = open.stream().filter(recipe -> recipe.kind() == Kind.BREAKDOWN);
        Stream<Recipe> others = open.stream().filter(recipe -> recipe.kind() == Kind.COMPONENT && isTest(recipe));
        return Stream.concat(breakdowns, others).map(Recipe::id).toList();
    }

    /** One bought weight alone, turned into something weighed. */
    private boolean isTest(Recipe recipe) {
        return recipe.uses().size() == 1
                && items.find(recipe.uses().get(0).item())
                        .filter(item -> !item.made())
                        .isPresent()
                && purchased(recipe).isPresent()
                && recipe.makes().stream()
                        .anyMatch(make -> weight(make.item(), make.quantity()).isPresent());
    }

    @Override
    public ButcherSheet sheet(String id, Optional<UnitPrice> dealer, Optional<Quantity> portion) {
        Recipe recipe = Optional.ofNullable(all().get(id))
                .orElseThrow(() -> new IllegalArgumentException(
                        "There is no recipe “" + id + "”." + LikelyIds.hint(id, all().keySet())));
        Quantity purchased = purchased(recipe)
                .filter(weight -> weight.signum() > 0)
                .orElseThrow(() -> new IllegalArgumentException(recipe.name()
                        + " does not begin with a weight of something, so there is no test to show; write how much of what is"
                        + " bought goes in, by weight."));
        portion.ifPresent(WeighedTests::refuseUnweighed);
        WeighedSheet sheet = new WeighedSheet(this, recipe, costs.recipe(id).orElseThrow(), purchased);
        return sheet.of(dealer.map(price -> perKg(recipe.uses().get(0).item(), price)), portion);
    }

    private static void refuseUnweighed(Quantity portion) {
        if (portion.unit().dimension() != Dimension.MASS || portion.signum() <= 0) {
            throw new IllegalArgumentException("A portion of a test is a weight, such as 170 g, not " + portion + ".");
        }
    }

    /** The weight as purchased of the first thing a recipe uses. */
    private Optional<Quantity> purchased(Recipe recipe) {
        return recipe.uses().stream()
                .findFirst()
                .flatMap(use -> items.find(use.item())
                        .map(use::asPurchased)
                        .filter(Conversion.Converted.class::isInstance)
                        .map(Conversion::orThrow)
                        .flatMap(quantity -> weight(use.item(), quantity)));
    }

    /** A quantity of an item in kg; empty when nothing says what it weighs. */
    Optional<Quantity> weight(String item, Quantity quantity) {
        if (quantity.unit().dimension() == Dimension.MASS) {
            return Optional.of(quantity.in(Unit.KG));
        }
        return items.find(item)
                .map(Item::converter)
                .map(converter -> converter.convert(quantity, Dimension.MASS))
                .filter(Conversion.Converted.class::isInstance)
                .map(Conversion::orThrow)
                .map(weight -> weight.in(Unit.KG));
    }

    private UnitPrice perKg(String item, UnitPrice price) {
        Quantity weight = weight(item, price.per())
                .orElseThrow(() -> new IllegalArgumentException("Nothing says what " + price.per() + " of "
                        + items.name(item) + " weighs; give the price a kg."));
        return WeighedSheet.perKg(price.amount(), weight);
    }

    Items items() {
        return items;
    }

    Kitchen kitchen() {
        return kitchen;
    }
}
