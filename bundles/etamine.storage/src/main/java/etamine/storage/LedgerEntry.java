package etamine.storage;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * One line of a ledger, never changed after it was written.
 *
 * @param id unique within the ledger
 * @param at when it happened in the kitchen, not when it was typed
 * @param keys a value for every key of the form; empty text where a key does not apply
 * @param measures a value for every measure of the form
 * @param detail further facts as JSON object text that are neither selected nor summed; {@code {}} if none
 * @param reverses the entry that this one takes back
 */
public record LedgerEntry(
        String id,
        Instant at,
        Map<String, String> keys,
        Map<String, Long> measures,
        String detail,
        Optional<String> reverses) {

    /** Copies the maps. */
    public LedgerEntry {
        keys = Map.copyOf(keys);
        measures = Map.copyOf(measures);
    }

    /** An entry that reverses nothing. */
    public static LedgerEntry of(
            String id, Instant at, Map<String, String> keys, Map<String, Long> measures, String detail) {
        return new LedgerEntry(id, at, keys, measures, detail, Optional.empty());
    }
}
