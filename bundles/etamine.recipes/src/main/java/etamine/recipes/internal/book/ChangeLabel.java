package etamine.recipes.internal.book;

import etamine.kitchen.recipe.Recipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Says in words what an edit does, for the undo menu. */
final class ChangeLabel {
    private ChangeLabel() {}

    static String of(Optional<Recipe> before, Recipe after) {
        return before.map(was -> between(was, after)).orElseGet(() -> "Add " + after.name());
    }

    private static String between(Recipe was, Recipe is) {
        if (!was.name().equals(is.name())) {
            return "Rename " + was.name() + " to " + is.name();
        }
        List<String> parts = new ArrayList<>();
        note(parts, "kind", was, is, Recipe::kind);
        note(parts, "lines", was, is, Recipe::uses);
        note(parts, "yield", was, is, Recipe::makes);
        note(parts, "portion", was, is, Recipe::portion);
        note(parts, "keeping time", was, is, Recipe::keeps);
        note(parts, "water taken up", was, is, recipe -> recipe.making().absorbs());
        note(parts, "reduction", was, is, recipe -> recipe.making().reducesTo());
        note(parts, "whole batches", was, is, recipe -> recipe.making().whole());
        note(parts, "station", was, is, recipe -> recipe.making().station());
        note(parts, "tests", was, is, Recipe::standing);
        note(parts, "steps", was, is, Recipe::steps);
        note(parts, "menu price", was, is, Recipe::menu);
        note(parts, "drinks", was, is, Recipe::drinks);
        note(parts, "notes", was, is, Recipe::notes);
        note(parts, "photo", was, is, Recipe::photo);
        return "Change " + (parts.isEmpty() ? "recipe" : String.join(", ", parts)) + " of " + is.name();
    }

    private static void note(List<String> parts, String name, Recipe was, Recipe is, Function<Recipe, Object> member) {
        if (!member.apply(was).equals(member.apply(is))) {
            parts.add(name);
        }
    }
}
