package etamine.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MapChangesTest {

    @Test
    void namesWhatCameWentAndWasReplaced() {
        Object kept = new Object();
        Map<String, Object> before = new TreeMap<>(Map.of("a", kept, "b", new Object(), "d", kept));
        Map<String, Object> after = new TreeMap<>(Map.of("a", kept, "b", new Object(), "c", kept));

        assertThat(MapChanges.between(before, after)).containsExactlyInAnyOrder("b", "c", "d");
        assertThat(MapChanges.between(before, before)).isEmpty();
        assertThat(MapChanges.between(Map.of(), after)).containsExactlyInAnyOrder("a", "b", "c");
        assertThat(MapChanges.between(before, Map.of())).containsExactlyInAnyOrder("a", "b", "d");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void findsTheSameInSortedMapsAsBySearching(long seed) {
        Random random = new Random(seed);
        Map<String, Object> before = new TreeMap<>();
        for (int i = 0; i < 200; i++) {
            before.put("k" + random.nextInt(400), new Object());
        }
        Map<String, Object> after = new TreeMap<>(before);
        Set<String> touched = new HashSet<>();
        for (int i = 0; i < 60; i++) {
            String key = "k" + random.nextInt(400);
            if (random.nextInt(3) > 0) {
                after.put(key, new Object());
                touched.add(key);
            } else if (after.remove(key) != null) {
                touched.add(key);
            }
        }
        touched.removeIf(key -> !before.containsKey(key) && !after.containsKey(key));

        assertThat(MapChanges.between(before, after)).isEqualTo(touched);
        assertThat(MapChanges.between(new HashMap<>(before), new HashMap<>(after)))
                .isEqualTo(touched);
    }
}
