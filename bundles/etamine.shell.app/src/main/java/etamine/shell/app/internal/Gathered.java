package etamine.shell.app.internal;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** Services of one kind that come and go on any thread; whoever listens is told on that same thread. */
final class Gathered<T> {
    private final List<T> present = new CopyOnWriteArrayList<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    void add(T service) {
        present.add(service);
        tell();
    }

    void remove(T service) {
        present.remove(service);
        tell();
    }

    /** Those present, in the order they came. */
    List<T> now() {
        return List.copyOf(present);
    }

    /** The one that came last. */
    Optional<T> latest() {
        List<T> all = now();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** Waits until there is one; empty when the time is up. Not for the window's thread. */
    Optional<T> await(long milliseconds) throws InterruptedException {
        long end = System.nanoTime() + milliseconds * 1_000_000;
        synchronized (listeners) {
            while (present.isEmpty() && System.nanoTime() < end) {
                listeners.wait(Math.max(1, (end - System.nanoTime()) / 1_000_000));
            }
        }
        return latest();
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void tell() {
        synchronized (listeners) {
            listeners.notifyAll();
        }
        listeners.forEach(Runnable::run);
    }
}
