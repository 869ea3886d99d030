package etamine.shell;

import java.util.function.BooleanSupplier;

/**
 * Something that can be done on a bench.
 *
 * @param id stable identifier within the station, for tests and key help
 * @param label on the button, such as {@code Add ingredient}
 * @param icon name of an icon in the palette; empty for none
 * @param key SWT accelerator, such as {@code SWT.MOD1 | 'N'}; 0 for none
 * @param enabled asked whenever the bench says its actions changed
 * @param run what it does
 */
public record BenchAction(String id, String label, String icon, int key, BooleanSupplier enabled, Runnable run) {

    /** An action that is always possible and has no key. */
    public static BenchAction of(String id, String label, String icon, Runnable run) {
        return new BenchAction(id, label, icon, 0, () -> true, run);
    }

    /** The same action with a key. */
    public BenchAction onKey(int accelerator) {
        return new BenchAction(id, label, icon, accelerator, enabled, run);
    }

    /** The same action, possible only when asked and true. */
    public BenchAction when(BooleanSupplier condition) {
        return new BenchAction(id, label, icon, key, condition, run);
    }
}
