package etamine.costing.internal.statement;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.stock.StockFlow;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the portions sold should have taken of every bought ingredient: exploded through the recipes together with what the
 * shelf gained of things made here, and with what it gave of them used first.
 *
 * @param recipes the recipe graph
 * @param items what is known of items
 */
record IdealUse(Recipes recipes, Items items) {

    Requirement of(Map<String, Long> sold, Map<String, StockFlow> flows) {
        Map<String, Quantity> wanted = new TreeMap<>();
        Map<String, Quantity> available = new TreeMap<>();
        sold.forEach((id, portions) -> recipes.find(id)
                .flatMap(recipe -> portion(recipe, portions))
                .ifPresent(quantity -> add(wanted, main(id), quantity)));
        for (StockFlow flow : flows.values()) {
            Quantity made = ShelfFigures.made(flow).quantity();
            if (recipes.maker(flow.item()).isPresent() && !made.isZero()) {
                add(made.signum() > 0 ? wanted : available, flow.item(), made.times(Ratio.of(made.signum())));
            }
        }
        return recipes.require(wanted, available);
    }

    private String main(String recipe) {
        return recipes.find(recipe).orElseThrow().makes().get(0).item();
    }

    /** So many portions of the main thing, in its own unit. */
    private Optional<Quantity> portion(Recipe recipe, long portions) {
        if (recipe.makes().isEmpty()) {
            return Optional.empty();
        }
        Make main = recipe.makes().get(0);
        Quantity one = recipe.portion()
                .filter(size -> !main.quantity().unit().isLike(Unit.PORTION))
                .orElse(Quantity.of(1, Unit.PORTION));
        return in(main.item(), one.times(Ratio.of(portions)), main.quantity().unit());
    }

    private void add(Map<String, Quantity> onto, String item, Quantity quantity) {
        Quantity there = onto.get(item);
        if (there == null) {
            onto.put(item, quantity);
        } else {
            in(item, quantity, there.unit()).ifPresent(more -> onto.put(item, there.plus(more)));
        }
    }

    /** A quantity in another unit, directly or through the item's measures. */
    private Optional<Quantity> in(String item, Quantity quantity, Unit unit) {
        if (quantity.unit().isLike(unit)) {
            return Optional.of(quantity.in(unit));
        }
        Optional<Item> known = items.find(item);
        return known.map(found -> found.converter().convert(quantity, unit))
                .filter(Conversion.Converted.class::isInstance)
                .map(Conversion::orThrow);
    }
}
