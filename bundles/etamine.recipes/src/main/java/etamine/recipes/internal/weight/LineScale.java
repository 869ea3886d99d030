package etamine.recipes.internal.weight;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.MadeThings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Weighs lines and outputs in one dimension. A made thing without a measure of its own weighs what went into it, which
 * is noted as the recipes are taken in their order. Not thread-safe.
 */
public final class LineScale {
    private final ItemView items;
    private final Dimension dimension;
    private final Map<String, Quantity> workedOut = new HashMap<>();
    private final Map<String, Quantity> each = new HashMap<>();

    /** A line on the scale: before trimming and after; or the sentence why not. */
    record Weight(Ratio before, Ratio after, String missing) {
        boolean known() {
            return missing.isEmpty();
        }
    }

    public LineScale(ItemView items, Dimension dimension) {
        this.items = items;
        this.dimension = dimension;
    }

    public Unit unit() {
        return Unit.basic(dimension);
    }

    /** Notes that so much of a made thing weighs that much, for want of a measure. */
    void note(String item, Quantity made, Ratio weight) {
        workedOut.putIfAbsent(item, new Quantity(weight, unit()));
        each.putIfAbsent(item, made);
    }

    Weight line(Use use) {
        Optional<Item> item = items.find(use.item());
        if (item.isEmpty()) {
            return missing("There is no item “" + use.item() + "”; add it, or write the recipe that makes it.");
        }
        Conversion bought = use.asPurchased(item.get());
        if (!(bought instanceof Conversion.Converted found)) {
            return missing(((Conversion.Missing) bought).text());
        }
        Weight whole = whole(item.get().converter(), use.item(), found.quantity());
        Ratio yield = use.as()
                .flatMap(item.get()::preparation)
                .map(Preparation::yield)
                .orElse(Ratio.ONE);
        return whole.known() ? new Weight(whole.before(), whole.before().times(yield), "") : whole;
    }

    Weight output(Recipe recipe, Make make) {
        Converter converter = Converter.of(
                recipe.makes().get(0) == make ? MadeThings.portion(recipe) : List.of(),
                items.find(make.item()).map(Item::measures).orElseGet(List::of));
        return whole(converter, make.item(), make.quantity());
    }

    /** A quantity of water, which weighs a gram a millilitre. */
    Optional<Ratio> water(Quantity quantity) {
        Unit unit = quantity.unit();
        boolean fluid = unit.dimension() == Dimension.VOLUME || unit.dimension() == Dimension.MASS;
        return fluid ? Optional.of(quantity.in(Unit.basic(unit.dimension())).amount()) : Optional.empty();
    }

    /** What a volume would weigh if it were water, where weights are looked for. */
    Optional<Ratio> asWater(Quantity quantity) {
        return dimension == Dimension.MASS && quantity.unit().dimension() == Dimension.VOLUME
                ? Optional.of(quantity.in(Unit.ML).amount())
                : Optional.empty();
    }

    private Weight whole(Converter converter, String item, Quantity quantity) {
        Conversion direct = converter.convert(quantity, dimension);
        if (direct instanceof Conversion.Converted found) {
            Ratio amount = found.quantity().in(unit()).amount();
            return new Weight(amount, amount, "");
        }
        Quantity made = each.get(item);
        if (made != null
                && converter.convert(quantity, made.unit()) instanceof Conversion.Converted found
                && !made.isZero()) {
            Ratio share = found.quantity().dividedBy(made);
            Ratio amount = workedOut.get(item).amount().times(share);
            return new Weight(amount, amount, "");
        }
        return missing(((Conversion.Missing) direct).text());
    }

    private static Weight missing(String sentence) {
        return new Weight(Ratio.ZERO, Ratio.ZERO, sentence);
    }
}
