package etamine.widgets;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The flow that a river shows, and ways through it. */
final class RiverShape {
    static final RiverShape EMPTY = new RiverShape(List.of(), List.of());

    private final List<RiverDrawing.Pool> pools;
    private final List<RiverDrawing.Stream> streams;
    private final Map<String, RiverDrawing.Pool> byId = new HashMap<>();

    RiverShape(List<RiverDrawing.Pool> pools, List<RiverDrawing.Stream> streams) {
        this.pools = List.copyOf(pools);
        this.streams = List.copyOf(streams);
        pools.forEach(pool -> byId.put(pool.id(), pool));
    }

    List<RiverDrawing.Pool> pools() {
        return pools;
    }

    List<RiverDrawing.Stream> streams() {
        return streams;
    }

    Optional<RiverDrawing.Pool> pool(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    RiverDrawing.Role role(String id) {
        return byId.get(id).role();
    }

    int columns() {
        return pools.stream().mapToInt(RiverDrawing.Pool::column).max().orElse(-1) + 1;
    }

    /** Where the thickest ribbon of a pool leads, downstream or upstream. */
    Optional<String> thickest(String id, boolean downstream) {
        return streams.stream()
                .filter(stream -> (downstream ? stream.from() : stream.to()).equals(id))
                .max(Comparator.comparingLong(RiverDrawing.Stream::amount))
                .map(stream -> downstream ? stream.to() : stream.from());
    }
}
