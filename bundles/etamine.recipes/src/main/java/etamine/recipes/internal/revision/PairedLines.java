package etamine.recipes.internal.revision;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Lines of two lists that belong together: of one key, the first of it with the first, and so on. */
final class PairedLines {
    private PairedLines() {}

    /**
     * Two lines that belong together, or one that has no other.
     *
     * @param older the line in the older list
     * @param newer the line in the newer list
     * @param moved whether it stands elsewhere among those that both lists have
     */
    record Pair<T>(Optional<T> older, Optional<T> newer, boolean moved) {}

    /** In the order of the newer list, each line that went before what followed it. */
    static <T> List<Pair<T>> of(List<T> older, List<T> newer, Function<T, String> key) {
        Map<String, Deque<Integer>> places = new HashMap<>();
        for (int i = 0; i < older.size(); i++) {
            places.computeIfAbsent(key.apply(older.get(i)), any -> new ArrayDeque<>())
                    .add(i);
        }
        int[] origins = new int[newer.size()];
        boolean[] taken = new boolean[older.size()];
        for (int i = 0; i < newer.size(); i++) {
            Integer place = places.getOrDefault(key.apply(newer.get(i)), new ArrayDeque<>())
                    .poll();
            origins[i] = place == null ? -1 : place;
            if (place != null) {
                taken[place] = true;
            }
        }
        return pairs(older, newer, origins, taken);
    }

    private static <T> List<Pair<T>> pairs(List<T> older, List<T> newer, int[] origins, boolean[] taken) {
        List<Pair<T>> pairs = new ArrayList<>();
        int gone = 0;
        int furthest = -1;
        for (int i = 0; i < newer.size(); i++) {
            int origin = origins[i];
            while (origin >= 0 && gone < origin) {
                gone(older, taken, gone++, pairs);
            }
            boolean moved = origin >= 0 && origin < furthest;
            furthest = Math.max(furthest, origin);
            Optional<T> was = origin < 0 ? Optional.empty() : Optional.of(older.get(origin));
            pairs.add(new Pair<>(was, Optional.of(newer.get(i)), moved));
        }
        while (gone < older.size()) {
            gone(older, taken, gone++, pairs);
        }
        return pairs;
    }

    private static <T> void gone(List<T> older, boolean[] taken, int place, List<Pair<T>> pairs) {
        if (!taken[place]) {
            pairs.add(new Pair<>(Optional.of(older.get(place)), Optional.empty(), false));
        }
    }
}
