package etamine.costing.internal.engine;

import java.util.AbstractMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A few entries laid over many, without copying the many. */
public final class Overlay<V> extends AbstractMap<String, V> {
    private final Map<String, V> over;
    private final Map<String, V> under;

    public Overlay(Map<String, V> over, Map<String, V> under) {
        this.over = over;
        this.under = under;
    }

    @Override
    public @Nullable V get(@Nullable Object key) {
        V found = over.get(key);
        return found != null ? found : under.get(key);
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
        return get(key) != null;
    }

    @Override
    public Set<Entry<String, V>> entrySet() {
        Map<String, V> all = new HashMap<>(under);
        all.putAll(over);
        return all.entrySet();
    }
}
