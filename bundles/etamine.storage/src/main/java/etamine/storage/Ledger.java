package etamine.storage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** Append-only entries, read side. Thread-safe; each call sees one consistent state. */
@ProviderType
public interface Ledger {

    /** Its shape. */
    LedgerForm form();

    /** The entry of that id. */
    Optional<LedgerEntry> entry(String id);

    /** The selected entries in order of {@code at}, then of writing. */
    List<LedgerEntry> entries(Selection selection);

    /**
     * The measures of the selected entries summed by the given keys; groups in which all sums are zero are left out.
     *
     * @param by names of keys; empty for one total
     */
    List<Sum> sums(Selection selection, List<String> by);

    /**
     * One group of a summing.
     *
     * @param keys the values of the keys grouped by
     * @param measures the sums
     * @param entries how many entries it has
     */
    record Sum(Map<String, String> keys, Map<String, Long> measures, long entries) {}
}
