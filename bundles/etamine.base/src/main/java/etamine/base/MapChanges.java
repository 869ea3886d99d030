package etamine.base;

import java.util.HashSet;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/**
 * What differs between two snapshots of a map whose values are replaced rather than changed. Values are compared by
 * identity, so two snapshots that share most of their values are compared in one pass without looking into any.
 */
@Exemption(
        rule = "exported-types",
        because = "pure comparison of two values, needed alike by every module that follows what others know")
public final class MapChanges {
    private MapChanges() {}

    /** The keys of all values that came, went or are not the same object any more. */
    public static Set<String> between(Map<String, ?> before, Map<String, ?> after) {
        if (before == after) {
            return Set.of();
        }
        return isSorted(before) && isSorted(after) ? merged(before, after) : searched(before, after);
    }

    private static boolean isSorted(Map<String, ?> map) {
        return map instanceof SortedMap<String, ?> sorted && sorted.comparator() == null;
    }

    /** Walks both in the order of their keys. */
    private static Set<String> merged(Map<String, ?> before, Map<String, ?> after) {
        Set<String> changed = new HashSet<>();
        Walk then = new Walk(before);
        Walk now = new Walk(after);
        while (then.isOnEntry() && now.isOnEntry()) {
            int order = then.key.compareTo(now.key);
            if (order != 0 || then.value != now.value) {
                changed.add(order < 0 ? then.key : now.key);
            }
            if (order <= 0) {
                then.step();
            }
            if (order >= 0) {
                now.step();
            }
        }
        then.rest(changed);
        now.rest(changed);
        return changed;
    }

    private static final class Walk {
        private final Iterator<? extends Map.Entry<String, ?>> entries;
        private boolean onEntry;
        private String key = "";
        private @Nullable Object value;

        Walk(Map<String, ?> map) {
            entries = map.entrySet().iterator();
            step();
        }

        boolean isOnEntry() {
            return onEntry;
        }

        void step() {
            onEntry = entries.hasNext();
            if (onEntry) {
                Map.Entry<String, ?> entry = entries.next();
                key = entry.getKey();
                value = entry.getValue();
            }
        }

        void rest(Set<String> keys) {
            for (; onEntry; step()) {
                keys.add(key);
            }
        }
    }

    private static Set<String> searched(Map<String, ?> before, Map<String, ?> after) {
        Set<String> changed = new HashSet<>();
        after.forEach((key, value) -> {
            if (before.get(key) != value) {
                changed.add(key);
            }
        });
        before.keySet().stream().filter(key -> !after.containsKey(key)).forEach(changed::add);
        return changed;
    }
}
