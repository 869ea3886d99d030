package etamine.recipes.internal.scale;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.internal.ItemView;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * How many batches what is on hand allows.
 *
 * @param each for every item named, how many batches it is enough for, the scarcest first
 */
record OnHandLimit(List<Enough> each) {

    /**
     * One item.
     *
     * @param item the item
     * @param have how much there is
     * @param batches for how many batches that is enough
     */
    record Enough(Item item, Quantity have, Ratio batches) {}

    /** Refuses, with a sentence, items that the recipe does not use and amounts that cannot be compared. */
    static OnHandLimit of(Recipe recipe, Map<String, Quantity> have, ItemView items) {
        if (have.isEmpty()) {
            throw new MeasureException("Say what is on hand, such as celeriac=2.4 kg.");
        }
        List<Enough> enough = new ArrayList<>();
        have.forEach((id, quantity) -> enough.add(enough(recipe, id, quantity, items)));
        enough.sort(Comparator.comparing(Enough::batches).thenComparing(one -> one.item.id()));
        return new OnHandLimit(List.copyOf(enough));
    }

    Ratio batches() {
        return each.get(0).batches;
    }

    private static Enough enough(Recipe recipe, String id, Quantity have, ItemView items) {
        List<Use> lines =
                recipe.uses().stream().filter(use -> use.item().equals(id)).toList();
        if (lines.isEmpty()) {
            throw new MeasureException(recipe.name() + " does not use “" + items.name(id) + "”; it uses "
                    + String.join(
                            ", ",
                            recipe.uses().stream()
                                    .map(use -> items.name(use.item()))
                                    .distinct()
                                    .limit(20)
                                    .toList())
                    + ".");
        }
        if (have.signum() < 0) {
            throw new MeasureException("Write how much " + items.name(id) + " there is, not less than zero.");
        }
        Item item = items.find(id)
                .orElseThrow(() -> new MeasureException(
                        "There is no item “" + id + "”; add it to the ingredients before it can limit a batch."));
        Quantity need = lines.stream()
                .map(use -> purchased(use, item))
                .reduce(Quantity::plus)
                .orElseThrow();
        Conversion there = item.converter().convert(have, need.unit());
        if (there instanceof Conversion.Missing missing) {
            throw new MeasureException(item.name() + ": " + missing.text());
        }
        return new Enough(item, have, there.orThrow().dividedBy(need));
    }

    private static Quantity purchased(Use use, Item item) {
        if (use.asPurchased(item) instanceof Conversion.Missing missing) {
            throw new MeasureException(item.name() + ": " + missing.text());
        }
        return use.asPurchased(item).orThrow();
    }
}
