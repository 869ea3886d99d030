package etamine.kitchen.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Exemption;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BiPredicate;

/**
 * Brings an edit into a stored entry while keeping everything the editor does not know: members it never wrote stay,
 * and members it did not change keep the spelling they had.
 */
@Exemption(
        rule = "exported-types",
        because = "sections of all modules keep unknown members alike, and modules may not share code otherwise")
public final class EntryMerge {
    private static final List<String> NAMES = List.of("id", "name", "item", "of");

    private EntryMerge() {}

    /**
     * The stored entry with the changes between two forms of it. None of the arguments is changed.
     *
     * @param stored as it is in the book
     * @param before how the editor writes what it read from {@code stored}
     * @param after how the editor writes what it has now
     */
    public static ObjectNode apply(ObjectNode stored, ObjectNode before, ObjectNode after) {
        ObjectNode result = stored.deepCopy();
        TreeSet<String> members = new TreeSet<>();
        before.fieldNames().forEachRemaining(members::add);
        after.fieldNames().forEachRemaining(members::add);
        for (String member : members) {
            JsonNode old = before.path(member);
            JsonNode fresh = after.path(member);
            if (fresh.isMissingNode()) {
                result.remove(member);
            } else if (!fresh.equals(old)) {
                result.set(member, value(stored.path(member), old, fresh));
            }
        }
        return result;
    }

    private static JsonNode value(JsonNode stored, JsonNode old, JsonNode fresh) {
        if (stored instanceof ObjectNode kept && old instanceof ObjectNode was && fresh instanceof ObjectNode is) {
            return apply(kept, was, is);
        }
        if (stored instanceof ArrayNode kept && old instanceof ArrayNode was && fresh instanceof ArrayNode is) {
            return elements(kept, was, is);
        }
        return fresh.deepCopy();
    }

    private static ArrayNode elements(ArrayNode stored, ArrayNode old, ArrayNode fresh) {
        ArrayNode result = fresh.arrayNode();
        int[] origins = stored.size() == old.size() ? origins(old, fresh) : new int[0];
        for (int i = 0; i < fresh.size(); i++) {
            int from = i < origins.length ? origins[i] : -1;
            if (from < 0) {
                result.add(fresh.get(i).deepCopy());
            } else {
                boolean same = old.get(from).equals(fresh.get(i));
                result.add(same ? stored.get(from).deepCopy() : value(stored.get(from), old.get(from), fresh.get(i)));
            }
        }
        return result;
    }

    /** Where each element came from: an equal one, else one of the same name; -1 for a new one. */
    private static int[] origins(ArrayNode old, ArrayNode fresh) {
        int[] origins = new int[fresh.size()];
        Arrays.fill(origins, -1);
        boolean[] taken = new boolean[old.size()];
        match(old, fresh, origins, taken, JsonNode::equals);
        match(
                old,
                fresh,
                origins,
                taken,
                (was, is) -> !named(is).isEmpty() && named(was).equals(named(is)));
        return origins;
    }

    private static void match(
            ArrayNode old, ArrayNode fresh, int[] origins, boolean[] taken, BiPredicate<JsonNode, JsonNode> same) {
        for (int i = 0; i < fresh.size(); i++) {
            for (int j = 0; origins[i] < 0 && j < old.size(); j++) {
                if (!taken[j] && same.test(old.get(j), fresh.get(i))) {
                    origins[i] = j;
                    taken[j] = true;
                }
            }
        }
    }

    private static String named(JsonNode element) {
        return NAMES.stream()
                .map(name -> element.path(name).asText(""))
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }
}
