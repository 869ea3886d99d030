package etamine.kitchen.item;

import etamine.base.Exemption;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;

/** What differs between two snapshots of the items, found in one pass where both are in the order of ids. */
@Exemption(
        rule = "exported-types",
        because = "pure comparison of two values, needed alike by every module that follows the items")
public final class ItemChanges {
    private ItemChanges() {}

    /** The ids of all items that came, went or are not the same object any more. */
    public static Set<String> between(Map<String, Item> before, Map<String, Item> after) {
        if (before == after) {
            return Set.of();
        }
        Set<String> changed = new HashSet<>();
        Iterator<Map.Entry<String, Item>> then = before.entrySet().iterator();
        for (Map.Entry<String, Item> now : after.entrySet()) {
            Map.Entry<String, Item> was = then.hasNext() ? then.next() : now;
            if (was == now || !was.getKey().equals(now.getKey())) {
                return searched(before, after);
            }
            if (was.getValue() != now.getValue()) {
                changed.add(now.getKey());
            }
        }
        return then.hasNext() ? searched(before, after) : changed;
    }

    private static Set<String> searched(Map<String, Item> before, Map<String, Item> after) {
        Set<String> changed = new HashSet<>();
        after.forEach((id, item) -> {
            if (before.get(id) != item) {
                changed.add(id);
            }
        });
        before.keySet().stream().filter(id -> !after.containsKey(id)).forEach(changed::add);
        return changed;
    }
}
