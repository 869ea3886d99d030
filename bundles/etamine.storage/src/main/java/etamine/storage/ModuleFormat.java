package etamine.storage;

import java.util.List;

/**
 * What a module keeps in a book.
 *
 * @param module the module's name
 * @param version its data format, from 1
 * @param ledgers the ledgers it writes
 * @param migrations steps from older formats, in any order
 */
public record ModuleFormat(String module, int version, List<LedgerForm> ledgers, List<Migration> migrations) {

    /** Copies the lists. */
    public ModuleFormat {
        ledgers = List.copyOf(ledgers);
        migrations = List.copyOf(migrations);
    }

    /**
     * One step from one format to the next.
     *
     * @param from the format it starts from
     * @param work what to do, on the module's own shelves and ledgers
     */
    public record Migration(int from, java.util.function.Consumer<MigrationContext> work) {}
}
