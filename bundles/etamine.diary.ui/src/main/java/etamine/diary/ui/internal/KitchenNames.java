package etamine.diary.ui.internal;

import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.use.ExpectedUse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * Names of recipes and items as people read and type them; without the module that knows them, ids stand as they are.
 */
final class KitchenNames {
    private static final int MOST = 12;

    private final Supplier<Optional<Recipes>> recipes;
    private final Supplier<Optional<Items>> items;
    private final Supplier<Optional<ExpectedUse>> expectedUse;

    KitchenNames(
            Supplier<Optional<Recipes>> recipes,
            Supplier<Optional<Items>> items,
            Supplier<Optional<ExpectedUse>> expectedUse) {
        this.recipes = recipes;
        this.items = items;
        this.expectedUse = expectedUse;
    }

    Optional<ExpectedUse> expectedUse() {
        return expectedUse.get();
    }

    String recipe(String id) {
        return recipes.get().flatMap(known -> known.find(id)).map(Recipe::name).orElse(id);
    }

    String item(String id) {
        return items.get().map(known -> known.name(id)).orElse(id);
    }

    /** The recipe meant by what was typed; empty when there is none such. */
    Optional<String> recipeOf(String typed) {
        return recipes.get().isEmpty() ? Optional.of(typed) : meant(recipeNames(), typed);
    }

    /** The item meant by what was typed; empty when there is none such. */
    Optional<String> itemOf(String typed) {
        return items.get().isEmpty() ? Optional.of(typed) : meant(itemNames(), typed);
    }

    List<String> completeRecipe(String typed) {
        return complete(recipeNames(), typed);
    }

    List<String> completeItem(String typed) {
        return complete(itemNames(), typed);
    }

    private Map<String, String> recipeNames() {
        Map<String, String> names = new TreeMap<>();
        recipes.get().ifPresent(known -> known.all().forEach((id, recipe) -> names.put(id, recipe.name())));
        return names;
    }

    private Map<String, String> itemNames() {
        Map<String, String> names = new TreeMap<>();
        items.get().ifPresent(known -> known.all().forEach((id, item) -> names.put(id, item.name())));
        return names;
    }

    private static Optional<String> meant(Map<String, String> names, String typed) {
        if (names.containsKey(typed)) {
            return Optional.of(typed);
        }
        List<String> ids = names.entrySet().stream()
                .filter(entry -> entry.getValue().equalsIgnoreCase(typed))
                .map(Map.Entry::getKey)
                .toList();
        return ids.size() == 1 ? Optional.of(ids.get(0)) : Optional.empty();
    }

    private static List<String> complete(Map<String, String> names, String typed) {
        String lower = typed.toLowerCase(Locale.ROOT);
        return names.values().stream()
                .filter(name -> name.toLowerCase(Locale.ROOT).contains(lower))
                .sorted()
                .limit(MOST)
                .toList();
    }
}
