package etamine.storage;

import java.util.List;

/**
 * The shape of a ledger: what its entries are found by and what is summed.
 *
 * @param name lower-case letters and underscores
 * @param keys names of the text columns entries are selected and grouped by; indexed in this order
 * @param measures names of the whole-number columns that are summed and negated on reversal
 */
public record LedgerForm(String name, List<String> keys, List<String> measures) {

    /** Copies the lists and checks the names. */
    public LedgerForm {
        keys = List.copyOf(keys);
        measures = List.copyOf(measures);
        if (!name.matches("[a-z][a-z_]*")) {
            throw new IllegalArgumentException("A ledger's name has only lower-case letters and underscores: " + name);
        }
    }
}
