package etamine.recipes.ui.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Equivalence;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line that is understood, but measured in something whose weight nobody has written.
 *
 * @param item what it is about
 * @param preparation the preparation whose measure it is; empty where it is one of the item as it is
 * @param unit what is to be weighed
 * @param sentence what is missing
 */
record Unweighed(Item item, Optional<Preparation> preparation, Unit unit, String sentence) {

    /** What is missing for a use; empty when nothing is, or when one weight would not be enough. */
    static Optional<Unweighed> of(Use use, ItemWords words) {
        Optional<Item> item = words.find(use.item());
        return item.flatMap(known -> use.asPurchased(known) instanceof Conversion.Missing missing
                ? of(use, known, missing)
                : Optional.empty());
    }

    private static Optional<Unweighed> of(Use use, Item item, Conversion.Missing missing) {
        boolean fromWeighs = missing.from().dimension() == Dimension.MASS;
        boolean toWeighs = missing.to().dimension() == Dimension.MASS;
        if (fromWeighs == toWeighs) {
            return Optional.empty();
        }
        Unit unit = fromWeighs ? missing.to() : missing.from();
        Optional<Preparation> filled =
                unit.dimension() == Dimension.VOLUME ? use.as().flatMap(item::preparation) : Optional.empty();
        return Optional.of(new Unweighed(item, filled, unit, missing.text()));
    }

    /** What to add, in words. */
    String offer() {
        return "Write what 1 " + unit + " of " + named() + " weighs";
    }

    String named() {
        return item.name() + preparation.map(each -> ", " + each.name()).orElse("");
    }

    /** The measure that says it. */
    Equivalence measure(String typed) {
        Quantity weight = QuantityText.parse(typed.strip());
        if (weight.signum() <= 0 || weight.unit().dimension() != Dimension.MASS) {
            throw new MeasureException("Write what it weighs, such as 150 g.");
        }
        return new Equivalence(Quantity.of(1, unit), weight);
    }

    /** What is wrong with what was typed, if anything. */
    Optional<String> problem(String typed) {
        try {
            measure(typed);
            return Optional.empty();
        } catch (MeasureException unclear) {
            return Optional.of(unclear.getMessage());
        }
    }

    /** The preparation with the measure added. */
    static Preparation with(Preparation preparation, Equivalence measure) {
        List<Equivalence> measures = new ArrayList<>(preparation.measures());
        measures.add(measure);
        return new Preparation(preparation.name(), preparation.yield(), measures);
    }
}
