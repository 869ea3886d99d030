package etamine.inventory.internal;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What made things cost by the lots that went into them: credited ones at their credit, the others share what remains by
 * weight. Empty as soon as one lot's cost or one weight is not known, so that no cost is ever too low.
 */
final class BatchCost {
    private static final int PLACES = 6;
    private static final int FEWEST_PLACES = 2;

    private final Map<Make, UnitPrice> prices;

    private BatchCost(Map<Make, UnitPrice> prices) {
        this.prices = prices;
    }

    Optional<UnitPrice> of(Make make) {
        return Optional.ofNullable(prices.get(make));
    }

    static BatchCost of(Recipe recipe, Ratio batches, List<Draft> used, KnownItems items) {
        Optional<Ratio> left = total(used, items);
        Map<Make, Ratio> weights = new HashMap<>();
        for (Make make : recipe.makes()) {
            Optional<Ratio> credit = credit(make, batches, items);
            if (make.credit().isPresent()) {
                left = left.flatMap(sum -> credit.map(sum::minus));
            } else {
                Optional<Ratio> weight = alone(recipe) ? Optional.of(Ratio.ONE) : weight(make, batches, items);
                weight.ifPresent(known -> weights.put(make, known));
                left = weight.isPresent() ? left : Optional.empty();
            }
        }
        return new BatchCost(
                left.map(sum -> share(recipe, batches, sum, weights)).orElse(Map.of()));
    }

    private static Map<Make, UnitPrice> share(Recipe recipe, Ratio batches, Ratio sum, Map<Make, Ratio> weights) {
        Ratio whole = weights.values().stream().reduce(Ratio.ZERO, Ratio::plus);
        Map<Make, UnitPrice> prices = new HashMap<>();
        for (Make make : recipe.makes()) {
            Quantity made = make.quantity().times(batches);
            if (make.credit().isPresent()) {
                prices.put(make, make.credit().get());
            } else if (sum.signum() >= 0 && whole.signum() > 0) {
                Ratio cost = sum.times(weights.get(make)).dividedBy(whole);
                prices.put(make, price(cost.dividedBy(made.amount()), made.unit()));
            }
        }
        return prices;
    }

    private static UnitPrice price(Ratio each, Unit unit) {
        Unit large = switch (unit.dimension()) {
            case MASS -> Unit.KG;
            case VOLUME -> Unit.L;
            default -> unit;
        };
        Ratio perLarge = each.times(large.inBase()).dividedBy(unit.inBase());
        BigDecimal rounded = perLarge.toDecimal(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return new UnitPrice(rounded.setScale(Math.max(FEWEST_PLACES, rounded.scale())), Quantity.of(1, large));
    }

    private static Optional<Ratio> total(List<Draft> used, KnownItems items) {
        Optional<Ratio> total = Optional.of(Ratio.ZERO);
        for (Draft draft : used) {
            Quantity quantity = Quantity.fromBase(draft.lot().dimension(), Math.negateExact(draft.amount()));
            Optional<Ratio> cost = draft.lot()
                    .unitCost()
                    .flatMap(price -> items.measure(draft.item())
                            .like(quantity, price.per().unit())
                            .map(price::cost));
            total = total.flatMap(sum -> cost.map(sum::plus));
        }
        return total;
    }

    private static Optional<Ratio> credit(Make make, Ratio batches, KnownItems items) {
        return make.credit()
                .flatMap(price -> items.measure(make.item())
                        .like(make.quantity().times(batches), price.per().unit())
                        .map(price::cost));
    }

    /** Whether a single thing takes all that is not credited, so that nobody needs its weight. */
    private static boolean alone(Recipe recipe) {
        return recipe.makes().stream().filter(make -> make.credit().isEmpty()).count() == 1;
    }

    private static Optional<Ratio> weight(Make make, Ratio batches, KnownItems items) {
        Quantity quantity = make.quantity().times(batches);
        return items.measure(make.item()).like(quantity, Unit.G).map(Quantity::amount);
    }
}
