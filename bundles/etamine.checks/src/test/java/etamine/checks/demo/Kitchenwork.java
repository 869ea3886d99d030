package etamine.checks.demo;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Follows sold portions through the recipes to what they take from the shelf, in base units. */
final class Kitchenwork {
    private final WrittenKitchen kitchen;
    private final List<Recipe> plateFirst;
    private final Map<Use, Ratio> asPurchased = new HashMap<>();

    Kitchenwork(WrittenKitchen kitchen) {
        this.kitchen = kitchen;
        List<Recipe> order = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        kitchen.recipes().forEach(recipe -> visit(recipe, seen, order));
        Collections.reverse(order);
        this.plateFirst = order;
    }

    private void visit(Recipe recipe, Set<String> seen, List<Recipe> order) {
        if (seen.add(recipe.id())) {
            recipe.uses().forEach(use -> kitchen.maker(use.item()).ifPresent(maker -> visit(maker, seen, order)));
            order.add(recipe);
        }
    }

    /** What so many portions of each recipe take, bought and made things alike. */
    Map<String, Long> takes(Map<String, Integer> sold) {
        Map<String, Ratio> needs = new TreeMap<>();
        sold.forEach((recipe, portions) -> needs.put(recipe, portions(recipe, portions)));
        for (Recipe recipe : plateFirst) {
            Ratio batches = Ratio.ZERO;
            for (Make make : recipe.makes()) {
                Ratio need = needs.getOrDefault(make.item(), Ratio.ZERO);
                batches = batches.max(need.dividedBy(base(kitchen.items().get(make.item()), make.quantity())));
            }
            for (Use use : recipe.uses()) {
                needs.merge(use.item(), asPurchased(use).times(batches), Ratio::plus);
            }
        }
        Map<String, Long> takes = new TreeMap<>();
        needs.forEach((item, need) -> takes.put(item, need.floor()));
        return takes;
    }

    /** All recipes, each before those that make what it uses. */
    List<Recipe> plateFirst() {
        return plateFirst;
    }

    private Ratio portions(String recipe, int portions) {
        return base(kitchen.items().get(recipe), Quantity.of(portions, Unit.PORTION));
    }

    /** Base units as purchased that one batch takes on a line. */
    Ratio asPurchased(Use use) {
        return asPurchased.computeIfAbsent(use, line -> {
            Item item = kitchen.items().get(line.item());
            Quantity bought = line.asPurchased(item).orThrow();
            return bought.amount().times(bought.unit().inBase());
        });
    }

    private static Ratio base(Item item, Quantity quantity) {
        Quantity counted = item.converter().convert(quantity, item.dimension()).orThrow();
        return counted.amount().times(counted.unit().inBase());
    }
}
