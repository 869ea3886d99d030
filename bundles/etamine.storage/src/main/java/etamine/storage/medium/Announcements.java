package etamine.storage.medium;

import etamine.base.Subscription;
import etamine.storage.Commit;
import java.lang.System.Logger;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/**
 * Tells every listener of every commit in order, also when a listener itself writes: what is still due is delivered
 * before the inner write returns. A listener that throws is logged and keeps nobody from hearing.
 */
final class Announcements {
    private static final Logger LOG = System.getLogger(Announcements.class.getName());

    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private final Deque<Delivery> due = new ArrayDeque<>();

    private static final class Listener {
        private final Consumer<Commit> consumer;

        Listener(Consumer<Commit> consumer) {
            this.consumer = consumer;
        }
    }

    private record Delivery(Listener listener, Commit commit) {}

    Subscription add(Consumer<Commit> consumer) {
        Listener listener = new Listener(consumer);
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Call with the write turn held. */
    void tell(Commit commit) {
        listeners.forEach(listener -> due.add(new Delivery(listener, commit)));
        for (Delivery next = due.poll(); next != null; next = due.poll()) {
            if (listeners.contains(next.listener)) {
                deliver(next);
            }
        }
    }

    private static void deliver(Delivery delivery) {
        try {
            delivery.listener.consumer.accept(delivery.commit);
        } catch (RuntimeException problem) {
            LOG.log(Logger.Level.ERROR, "A listener failed after \"" + delivery.commit.label() + "\"", problem);
        }
    }
}
