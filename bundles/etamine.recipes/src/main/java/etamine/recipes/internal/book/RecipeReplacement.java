package etamine.recipes.internal.book;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.ReplacedMembers;
import etamine.kitchen.item.Replacement;
import etamine.measures.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts one item in the place of another in the entry of a recipe. */
final class RecipeReplacement {
    private final ReplacedMembers members;
    private final String from;
    private final String into;

    RecipeReplacement(Replacement replacement) {
        this.members = new ReplacedMembers(replacement);
        this.from = replacement.from().id();
        this.into = replacement.into().id();
    }

    /** Changes the entry in place; answers whether there was something to change. */
    boolean applyTo(ObjectNode recipe) {
        boolean changed = false;
        for (ObjectNode line : objects(recipe.path("uses"))) {
            changed |= use(line);
        }
        boolean main = recipe.path("makes").path(0).path("item").asText().equals(from);
        boolean made = false;
        for (ObjectNode line : objects(recipe.path("makes"))) {
            made |= make(line);
        }
        if (made) {
            join(recipe);
        }
        if (main) {
            members.quantity(recipe, "portion");
        }
        for (JsonNode test : recipe.path("tests")) {
            for (ObjectNode out : objects(test.path("out"))) {
                changed |= line(out);
            }
        }
        return changed || made;
    }

    private boolean use(ObjectNode line) {
        boolean named = members.names(line);
        if (named) {
            Optional<String> as = Optional.of(line.path("as").asText("")).filter(text -> !text.isEmpty());
            members.quantity(line, "quantity", as);
            members.item(line);
        }
        return substitutes(line) || named;
    }

    /** What stands in for a thing is another thing, and stands there once. */
    private boolean substitutes(ObjectNode line) {
        if (!(line.path("or") instanceof ArrayNode old)) {
            return false;
        }
        Set<String> others = new LinkedHashSet<>();
        old.forEach(each -> others.add(each.asText().equals(from) ? into : each.asText()));
        others.remove(line.path("item").asText());
        ArrayNode fresh = line.arrayNode();
        others.forEach(fresh::add);
        if (fresh.equals(old)) {
            return false;
        }
        if (fresh.isEmpty()) {
            line.remove("or");
        } else {
            line.set("or", fresh);
        }
        return true;
    }

    private boolean make(ObjectNode line) {
        if (members.names(line)) {
            members.price(line, "credit");
            members.price(line, "marketValue");
        }
        return line(line);
    }

    private boolean line(ObjectNode line) {
        boolean named = members.names(line);
        if (named) {
            members.quantity(line, "quantity");
            members.item(line);
        }
        return named;
    }

    /** A recipe that made both makes one of them now, as much as both. */
    private void join(ObjectNode recipe) {
        List<ObjectNode> lines = objects(recipe.path("makes")).stream()
                .filter(line -> line.path("item").asText().equals(into))
                .toList();
        if (lines.size() < 2) {
            return;
        }
        ObjectNode first = lines.get(0);
        for (ObjectNode other : lines.subList(1, lines.size())) {
            Quantity one = Quantity.parse(first.path("quantity").asText());
            Quantity more = Quantity.parse(other.path("quantity").asText());
            if (!one.unit().isLike(more.unit())
                    || !first.path("credit").equals(other.path("credit"))
                    || !first.path("marketValue").equals(other.path("marketValue"))) {
                throw new IllegalArgumentException(
                        recipe.path("name").asText() + " makes both, by different measures or values;"
                                + " make one line of them there, then merge again.");
            }
            first.put("quantity", one.plus(more).toString());
        }
        ArrayNode kept = recipe.arrayNode();
        recipe.path("makes").forEach(line -> {
            if (line == first || !lines.contains(line)) {
                kept.add(line);
            }
        });
        recipe.set("makes", kept);
    }

    private static List<ObjectNode> objects(JsonNode list) {
        List<ObjectNode> objects = new ArrayList<>();
        list.forEach(each -> {
            if (each instanceof ObjectNode object) {
                objects.add(object);
            }
        });
        return objects;
    }
}
