package etamine.ordering.internal;

import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import java.util.List;
import java.util.Optional;

/** What entries of this module refer to, checked only where the module that knows it is installed. */
final class References {
    private References() {}

    static List<Trouble> item(String item, Facts facts) {
        if (!facts.covers(Item.class) || facts.find(Item.class, item).isPresent() || isMade(item, facts)) {
            return List.of();
        }
        return List.of(new Trouble("/item", "There is no item “" + item + "”; add it or correct the id."));
    }

    static List<Trouble> supplier(String supplier, Facts facts) {
        if (!facts.covers(Supplier.class)
                || facts.find(Supplier.class, supplier).isPresent()) {
            return List.of();
        }
        return List.of(new Trouble("/supplier", "There is no supplier “" + supplier + "”; add it or correct the id."));
    }

    static List<Trouble> countable(String item, Quantity quantity, String pointer, Facts facts) {
        Optional<Item> known = facts.find(Item.class, item);
        return known.isPresent() && Counting.count(known, quantity) instanceof Conversion.Missing missing
                ? List.of(new Trouble(pointer, missing.text()))
                : List.of();
    }

    private static boolean isMade(String item, Facts facts) {
        return facts.all(Recipe.class).values().stream()
                .flatMap(recipe -> recipe.makes().stream())
                .anyMatch(make -> make.item().equals(item));
    }
}
