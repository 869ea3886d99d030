package etamine.costing.internal.price;

import etamine.costing.CostSettings;
import etamine.costing.PriceAdvice;
import etamine.costing.PriceQuestion;
import etamine.costing.PriceRounding;
import etamine.costing.PriceTarget;
import etamine.costing.Pricing;
import etamine.costing.internal.words.LikelyIds;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.measures.Money;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Prices from targets: every quotient exact, rounded once when it becomes a price for the menu. */
@Component
public final class TargetPricing implements Pricing {
    private static final Ratio HUNDRED = Ratio.of(100);

    private final Costs costs;
    private final Items items;
    private final CostSettings settings;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Recipes recipes;

    /** Prices by those costs and rules. */
    @Activate
    public TargetPricing(@Reference Costs costs, @Reference Items items, @Reference CostSettings settings) {
        this.costs = costs;
        this.items = items;
        this.settings = settings;
    }

    @Override
    public PriceQuestion about(String recipe, PriceTarget target) {
        RecipeCost cost = costs.recipe(recipe)
                .orElseThrow(() -> new IllegalArgumentException("There is no recipe “" + recipe + "”."
                        + LikelyIds.hint(recipe, costs.recipes().keySet())));
        Money portion = cost.plate()
                .map(PlateCost::cost)
                .or(cost::portion)
                .orElseThrow(() -> new IllegalArgumentException(items.name(recipe)
                        + " has no portion, so there is nothing to price; say how big one portion is."));
        return new PriceQuestion(
                Optional.of(recipe),
                portion,
                cost.plate().flatMap(PlateCost::labour).or(() -> cost.labour().flatMap(RecipeCost.Labour::portion)),
                menu(recipe).map(MenuPrice::taxPercent).orElse(BigDecimal.ZERO),
                true,
                target,
                PriceRounding.of(settings.rules()));
    }

    private Optional<MenuPrice> menu(String recipe) {
        return Optional.ofNullable(recipes).flatMap(all -> all.find(recipe)).flatMap(Recipe::menu);
    }

    @Override
    public PriceAdvice advise(PriceQuestion question) {
        Ratio net = net(question);
        if (net.signum() < 0) {
            throw new IllegalArgumentException(
                    "That price would be below zero; ask for a contribution of no less than minus the cost.");
        }
        Ratio tax = Ratio.ONE.plus(Ratio.of(question.taxPercent()).dividedBy(HUNDRED));
        Ratio gross = net.times(tax);
        MenuRounding rounding =
                new MenuRounding(question.rounding(), question.cost().currency());
        Money menu = rounding.of(question.taxIncluded() ? gross : net);
        Ratio left = question.taxIncluded() ? menu.toRatio().dividedBy(tax) : menu.toRatio();
        PriceAnswer answer = new PriceAnswer(question, net, gross, menu, left);
        boolean lowerBound = question.recipe()
                .flatMap(costs::recipe)
                .filter(cost -> !cost.complete())
                .isPresent();
        return answer.advice(lowerBound, notes(question, answer), rounding);
    }

    private static Ratio net(PriceQuestion question) {
        Ratio cost = question.cost().toRatio();
        PriceTarget target = question.target();
        if (target instanceof PriceTarget.FoodCost share) {
            return cost.times(HUNDRED).dividedBy(Ratio.of(share.percent()));
        }
        if (target instanceof PriceTarget.Factor multiple) {
            return cost.times(Ratio.of(multiple.factor()));
        }
        if (target instanceof PriceTarget.Contribution left) {
            return cost.plus(Ratio.of(left.amount()));
        }
        Money labour = question.labour()
                .orElseThrow(() -> new IllegalArgumentException("Nobody reckons labour for this plate, so prime cost is"
                        + " not known; switch labour on in the costing rules, or say what its work costs."));
        return cost.plus(labour.toRatio())
                .times(HUNDRED)
                .dividedBy(Ratio.of(((PriceTarget.PrimeCost) target).percent()));
    }

    private List<String> notes(PriceQuestion question, PriceAnswer answer) {
        List<String> notes = new ArrayList<>();
        question.recipe().flatMap(costs::recipe).ifPresent(cost -> {
            if (!cost.missing().isEmpty()) {
                notes.add("No price is known for "
                        + String.join(
                                ", ", cost.missing().stream().map(items::name).toList())
                        + ": the cost is at least that, and so is the price.");
            }
            if (cost.plate().isEmpty()) {
                notes.add("It is not on the menu yet: tax is taken as "
                        + question.taxPercent().toPlainString()
                        + " %, and nothing is added for Q factor and packaging.");
            }
        });
        if (question.cost().isZero()) {
            notes.add("It costs nothing; look whether its lines are there.");
        }
        if (answer.contribution().signum() < 0) {
            notes.add("At this price it is sold below its cost.");
        }
        settings.rules()
                .targetFoodCostPercent()
                .filter(limit -> answer.foodCost()
                        .filter(percent -> percent.compareTo(limit) > 0)
                        .isPresent())
                .ifPresent(limit -> notes.add("Its food cost is above the house's " + limit.toPlainString() + " %."));
        return notes;
    }
}
