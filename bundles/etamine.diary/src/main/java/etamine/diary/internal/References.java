package etamine.diary.internal;

import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import java.util.List;
import java.util.Optional;

/** What an entry of the diary refers to, checked only where the module that knows it is installed. */
final class References {
    private References() {}

    static List<Trouble> recipe(String recipe, Facts facts) {
        if (!facts.covers(Recipe.class) || facts.find(Recipe.class, recipe).isPresent()) {
            return List.of();
        }
        return List.of(new Trouble("/recipe", "There is no recipe “" + recipe + "”; add it or correct the id."));
    }

    static List<Trouble> item(String item, Quantity quantity, Facts facts) {
        if (!facts.covers(Item.class)) {
            return List.of();
        }
        Optional<Item> found = facts.find(Item.class, item);
        if (found.isPresent()) {
            return measured(found.get(), quantity);
        }
        return madeBySomeRecipe(item, facts)
                ? List.of()
                : List.of(new Trouble("/item", "There is no item “" + item + "”; add it or correct the id."));
    }

    private static List<Trouble> measured(Item item, Quantity quantity) {
        boolean counted = item.dimension() != Dimension.WORD;
        Conversion conversion = counted
                ? item.converter().convert(quantity, item.dimension())
                : item.converter().convert(quantity, item.countIn());
        return conversion instanceof Conversion.Missing missing
                ? List.of(new Trouble("/quantity", missing.text()))
                : List.of();
    }

    private static boolean madeBySomeRecipe(String item, Facts facts) {
        return facts.all(Recipe.class).values().stream()
                .flatMap(recipe -> recipe.makes().stream())
                .anyMatch(make -> make.item().equals(item));
    }
}
