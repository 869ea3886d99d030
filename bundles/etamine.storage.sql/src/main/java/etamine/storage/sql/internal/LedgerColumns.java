package etamine.storage.sql.internal;

import etamine.storage.LedgerForm;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The names a ledger has in the database. Only letters, digits and underscores get into SQL.
 *
 * @param form the ledger's shape
 */
record LedgerColumns(LedgerForm form) {

    /** Checks the names. */
    LedgerColumns {
        Stream.concat(form.keys().stream(), form.measures().stream()).forEach(name -> {
            if (!name.matches("[A-Za-z][A-Za-z0-9_]*")) {
                throw new IllegalArgumentException(
                        "A key or measure has only letters, digits and underscores in its name: " + name);
            }
        });
    }

    String table() {
        return table(form.name());
    }

    static String table(String ledger) {
        return "ledger_" + ledger;
    }

    List<String> keys() {
        return form.keys().stream().map(LedgerColumns::key).toList();
    }

    List<String> measures() {
        return form.measures().stream().map(LedgerColumns::measure).toList();
    }

    List<String> all() {
        List<String> all = new ArrayList<>(keys());
        all.addAll(measures());
        return all;
    }

    static String key(String name) {
        return "k_" + name;
    }

    static String measure(String name) {
        return "m_" + name;
    }
}
