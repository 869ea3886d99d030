package etamine.base;

/** A listener that stays until it is closed. Closing twice is harmless. */
@FunctionalInterface
public interface Subscription extends AutoCloseable {

    @Override
    void close();
}
