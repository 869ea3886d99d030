package etamine.book.internal.exchange;

import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Facts in maps, one for each kind; what comes later replaces what came before. */
final class FactBoard implements Facts {
    private final Map<Class<?>, Map<String, Object>> facts = new HashMap<>();
    private final Set<Class<?>> declared = new HashSet<>();

    /** What these sections remember of the book. */
    static FactBoard of(Collection<ExchangeSection> sections) {
        FactBoard board = new FactBoard();
        for (ExchangeSection section : sections) {
            board.declared.addAll(section.declares());
            section.recall(board);
        }
        return board;
    }

    @Override
    public <T> void put(Class<T> kind, String id, T fact) {
        facts.computeIfAbsent(kind, any -> new LinkedHashMap<>()).put(id, fact);
    }

    @Override
    public <T> Optional<T> find(Class<T> kind, String id) {
        return Optional.ofNullable(facts.getOrDefault(kind, Map.of()).get(id)).map(kind::cast);
    }

    @Override
    @SuppressWarnings("unchecked") // put takes only facts of the kind
    public <T> Map<String, T> all(Class<T> kind) {
        return (Map<String, T>) Collections.unmodifiableMap(facts.getOrDefault(kind, Map.of()));
    }

    @Override
    public boolean covers(Class<?> kind) {
        return declared.contains(kind) || facts.containsKey(kind);
    }
}
