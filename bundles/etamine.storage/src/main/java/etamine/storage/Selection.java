package etamine.storage;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which entries of a ledger are meant: all that match every given part.
 *
 * @param equal key values to match
 * @param from earliest {@code at}, included
 * @param until latest {@code at}, excluded
 */
public record Selection(Map<String, String> equal, Optional<Instant> from, Optional<Instant> until) {

    /** Copies the map. */
    public Selection {
        equal = Map.copyOf(equal);
    }

    /** Every entry. */
    public static Selection all() {
        return new Selection(Map.of(), Optional.empty(), Optional.empty());
    }

    /** Only entries whose key has that value. */
    public Selection where(String key, String value) {
        Map<String, String> more = new LinkedHashMap<>(equal);
        more.put(key, value);
        return new Selection(more, from, until);
    }

    /** Only entries at or after that instant. */
    public Selection since(Instant instant) {
        return new Selection(equal, Optional.of(instant), until);
    }

    /** Only entries before that instant. */
    public Selection before(Instant instant) {
        return new Selection(equal, from, Optional.of(instant));
    }
}
