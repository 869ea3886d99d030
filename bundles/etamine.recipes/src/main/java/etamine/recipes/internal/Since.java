package etamine.recipes.internal;

import java.lang.ref.WeakReference;
import java.util.Optional;
import java.util.Set;

/**
 * What has changed since a predecessor, for those who ask after just that one, as nearly everybody does. It does not keep
 * the predecessor.
 *
 * @param <T> what follows one another
 */
record Since<T>(WeakReference<T> predecessor, Set<String> changed) {

    static <T> Since<T> of(T predecessor, Set<String> changed) {
        return new Since<>(new WeakReference<>(predecessor), Set.copyOf(changed));
    }

    static <T> Since<T> nothing() {
        return new Since<>(new WeakReference<>(null), Set.of());
    }

    /** What has changed since that one; empty when it is not the predecessor. */
    Optional<Set<String>> changes(T before) {
        return predecessor.refersTo(before) ? Optional.of(changed) : Optional.empty();
    }
}
