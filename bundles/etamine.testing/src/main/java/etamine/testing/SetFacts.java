package etamine.testing;

import etamine.kitchen.exchange.Facts;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Facts for tests of one section: what was put, and the kinds that are said to be covered. Not thread-safe. */
public final class SetFacts implements Facts {
    private final Map<Class<?>, Map<String, Object>> facts = new HashMap<>();
    private final Set<Class<?>> covered = new HashSet<>();

    /** Facts of which these kinds are covered, even while there are none. */
    public static SetFacts covering(Class<?>... kinds) {
        SetFacts facts = new SetFacts();
        facts.covered.addAll(Set.of(kinds));
        return facts;
    }

    @Override
    public <T> void put(Class<T> kind, String id, T fact) {
        covered.add(kind);
        facts.computeIfAbsent(kind, k -> new TreeMap<>()).put(id, fact);
    }

    @Override
    public <T> Optional<T> find(Class<T> kind, String id) {
        return Optional.ofNullable(facts.getOrDefault(kind, Map.of()).get(id)).map(kind::cast);
    }

    @Override
    public <T> Map<String, T> all(Class<T> kind) {
        Map<String, T> all = new TreeMap<>();
        facts.getOrDefault(kind, Map.of()).forEach((id, fact) -> all.put(id, kind.cast(fact)));
        return all;
    }

    @Override
    public boolean covers(Class<?> kind) {
        return covered.contains(kind);
    }
}
