package etamine.recipes.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.Optional;

/** Whether more comes out of a recipe by weight than goes in. Says nothing where a weight is not known. */
final class MassBalance {
    /** Measures are rounded, so a little more is no doubt. */
    private static final Ratio SLACK = Ratio.of(51, 50);

    private MassBalance() {}

    static Optional<String> doubt(Recipe recipe, ItemView items) {
        Optional<Quantity> in = in(recipe, items);
        Optional<Quantity> out = out(recipe, items);
        if (in.isEmpty()
                || out.isEmpty()
                || recipe.uses().isEmpty()
                || out.get().compareTo(in.get().times(SLACK)) <= 0) {
            return Optional.empty();
        }
        return Optional.of(recipe.name() + " makes " + shown(out.get()) + " out of " + shown(in.get())
                + "; check the amounts, or write down what was taken up, such as water.");
    }

    private static Optional<Quantity> in(Recipe recipe, ItemView items) {
        Quantity sum = Quantity.zero(Unit.G);
        for (Use use : recipe.uses()) {
            Optional<Quantity> weight = items.find(use.item()).flatMap(item -> trimmed(use, item));
            if (weight.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.plus(weight.get());
        }
        return Optional.of(sum);
    }

    /** What a line brings in after trimming. */
    private static Optional<Quantity> trimmed(Use use, Item item) {
        Ratio yield =
                use.as().flatMap(item::preparation).map(Preparation::yield).orElse(Ratio.ONE);
        return use.asPurchased(item) instanceof Conversion.Converted bought
                ? weight(item, bought.quantity()).map(weight -> weight.times(yield))
                : Optional.empty();
    }

    private static Optional<Quantity> out(Recipe recipe, ItemView items) {
        Quantity sum = Quantity.zero(Unit.G);
        for (Make make : recipe.makes()) {
            Optional<Quantity> weight = items.find(make.item()).flatMap(item -> weight(item, make.quantity()));
            if (weight.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.plus(weight.get());
        }
        return Optional.of(sum);
    }

    private static Optional<Quantity> weight(Item item, Quantity quantity) {
        return item.converter().convert(quantity, Dimension.MASS) instanceof Conversion.Converted found
                ? Optional.of(found.quantity())
                : Optional.empty();
    }

    private static String shown(Quantity quantity) {
        return QuantityText.format(quantity, MeasureStyle.METRIC);
    }
}
