package etamine.testing;

import etamine.storage.medium.MediumBook;
import java.time.Clock;

/** An empty book in memory that is gone with the last reference to it. Thread-safe. */
public final class VolatileBook extends MediumBook {

    /** A book dated by the system's clock. */
    public VolatileBook() {
        this(Clock.systemUTC());
    }

    /** A book dated by that clock. */
    public VolatileBook(Clock clock) {
        super(new VolatileMedium("volatile", new VolatileContent(), () -> {}), clock);
    }
}
