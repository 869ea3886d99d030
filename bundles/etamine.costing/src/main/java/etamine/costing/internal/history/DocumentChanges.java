package etamine.costing.internal.history;

import etamine.costing.Moved.Kind;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Recipe;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What changed on the documents of items and recipes between two standpoints, in words, sorted by kind of change. */
final class DocumentChanges {
    private final Mixture mixture;
    private final Map<Kind, Map<String, List<String>>> recipes = new EnumMap<>(Kind.class);
    private final Map<Kind, Map<String, List<Said>>> items = new EnumMap<>(Kind.class);

    /** What is said of an item, and of which of its preparations; empty for the item as a whole. */
    private record Said(String preparation, String text) {}

    DocumentChanges(Mixture mixture) {
        this.mixture = mixture;
        for (Kind kind : Kind.values()) {
            recipes.put(kind, new TreeMap<>());
            items.put(kind, new TreeMap<>());
        }
        mixture.now().recipes().forEach((id, recipe) -> {
            Recipe before = mixture.then().recipes().get(id);
            if (before != null && before != recipe) {
                new RecipeDifference(before, recipe, mixture.now().items())
                        .told()
                        .forEach((kind, texts) -> recipes.get(kind).put(id, texts));
            }
        });
        mixture.changedItems().forEach(this::item);
    }

    private void item(String id) {
        Item before = mixture.then().items().get(id);
        Item after = mixture.now().items().get(id);
        if (before == null || after == null || after.made() && before.made()) {
            return; // a made item is what its recipe says
        }
        for (Preparation preparation : after.preparations()) {
            Optional<Preparation> was = before.preparation(preparation.name());
            was.filter(old -> !old.yield().equals(preparation.yield()))
                    .ifPresent(old -> say(
                            Kind.YIELD,
                            id,
                            new Said(
                                    preparation.name(),
                                    after.name() + ", " + preparation.name() + ": yield " + old.yield() + " to "
                                            + preparation.yield())));
            was.filter(old -> !old.measures().equals(preparation.measures()))
                    .ifPresent(old -> say(
                            Kind.RECIPE,
                            id,
                            new Said(
                                    preparation.name(),
                                    after.name() + ", " + preparation.name() + ": other measures")));
        }
        if (!before.measures().equals(after.measures()) || !before.countIn().equals(after.countIn())) {
            say(Kind.RECIPE, id, new Said("", after.name() + ": other measures"));
        }
    }

    private void say(Kind kind, String id, Said said) {
        items.get(kind).computeIfAbsent(id, key -> new ArrayList<>()).add(said);
    }

    /** What changed of one kind below a recipe, by the id of the recipe or item. */
    Map<String, String> within(Reach reach, Kind kind) {
        Map<String, String> found = new LinkedHashMap<>();
        recipes.get(kind).forEach((id, texts) -> {
            if (reach.recipes().contains(id)) {
                found.put(id, String.join("; ", texts));
            }
        });
        items.get(kind).forEach((id, said) -> {
            List<String> texts = said.stream()
                    .filter(one -> one.preparation().isEmpty()
                            ? reach.items().contains(id)
                            : reach.prepared().contains(id + "/" + one.preparation()))
                    .map(Said::text)
                    .toList();
            if (!texts.isEmpty()) {
                found.merge(id, String.join("; ", texts), (one, more) -> one + "; " + more);
            }
        });
        return found;
    }
}
