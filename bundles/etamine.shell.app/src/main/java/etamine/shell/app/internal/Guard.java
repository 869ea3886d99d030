package etamine.shell.app.internal;

import java.util.Optional;
import java.util.function.Supplier;

/** Calls into modules on the window's thread without being taken down by them. */
final class Guard {
    private Guard() {}

    /** The answer; empty when the call failed, which is noted in the log. */
    static <T> Optional<T> value(String during, Supplier<T> call) {
        try {
            return Optional.ofNullable(call.get());
        } catch (RuntimeException | LinkageError problem) {
            Trouble.note(during, problem);
            return Optional.empty();
        }
    }
}
