package etamine.ingredients.internal;

import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldTest;
import etamine.kitchen.item.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Says in words what an edit does, for the undo menu. */
final class ChangeLabel {
    private ChangeLabel() {}

    static String of(Optional<Ingredient> before, Ingredient after) {
        return before.map(was -> between(was, after))
                .orElseGet(() -> "Add " + after.item().name());
    }

    private static String between(Ingredient before, Ingredient after) {
        Item was = before.item();
        Item is = after.item();
        if (!was.name().equals(is.name())) {
            return "Rename " + was.name() + " to " + is.name();
        }
        List<String> parts = new ArrayList<>();
        note(parts, "group", was, is, Item::group);
        note(parts, "storage", was, is, Item::storage);
        note(parts, "keeping time", was, is, Item::keeps);
        note(parts, "counting unit", was, is, Item::countIn);
        note(parts, "measures", was, is, Item::measures);
        note(parts, "preparations", was, is, Item::preparations);
        note(parts, "allergens", was, is, Item::allergens);
        note(parts, "price", was, is, Item::writtenPrice);
        note(parts, "diet", was, is, Item::diet);
        if (!tests(before).equals(tests(after))) {
            parts.add("yield tests");
        }
        return "Change " + (parts.isEmpty() ? "notes" : String.join(", ", parts)) + " of " + is.name();
    }

    private static void note(List<String> parts, String name, Item was, Item is, Function<Item, Object> member) {
        if (!member.apply(was).equals(member.apply(is))) {
            parts.add(name);
        }
    }

    private static Map<String, List<YieldTest>> tests(Ingredient ingredient) {
        return ingredient.yields().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, record -> record.getValue().tests()));
    }
}
