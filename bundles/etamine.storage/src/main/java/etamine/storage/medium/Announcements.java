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
 * before the inner write returns. Followers hear before all listeners. Whoever throws is logged and keeps nobody from
 * hearing.
 */
final class Announcements {
    private static final Logger LOG = System.getLogger(Announcements.class.getName());

    private final List<Listener> followers = new CopyOnWriteArrayList<>();
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private final Deque<Delivery> due = new ArrayDeque<>();
    private volatile long followed;

    /** Announcements of the commits after that revision. */
    Announcements(long revision) {
        followed = revision;
    }

    private static final class Listener {
        private final Consumer<Commit> consumer;

        Listener(Consumer<Commit> consumer) {
            this.consumer = consumer;
        }
    }

    private record Delivery(Listener listener, Commit commit) {}

    Subscription add(Consumer<Commit> consumer) {
        return add(consumer, listeners);
    }

    Subscription addFollower(Consumer<Commit> consumer) {
        return add(consumer, followers);
    }

    private static Subscription add(Consumer<Commit> consumer, List<Listener> to) {
        Listener listener = new Listener(consumer);
        to.add(listener);
        return () -> to.remove(listener);
    }

    /** The last revision that all followers have heard of. */
    long followed() {
        return followed;
    }

    /** Call with the write turn held. */
    void tell(Commit commit) {
        followers.forEach(follower -> deliver(new Delivery(follower, commit)));
        followed = commit.revision();
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
