package etamine.testing;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that stands still until a test moves it; in UTC unless told. Thread-safe. */
public final class SetClock extends Clock {
    private final AtomicReference<Instant> now;
    private final ZoneId zone;

    private SetClock(AtomicReference<Instant> now, ZoneId zone) {
        this.now = now;
        this.zone = zone;
    }

    /** A clock standing at that instant, written as in {@code 2026-11-24T09:00:00Z}. */
    public static SetClock at(String instant) {
        return new SetClock(new AtomicReference<>(Instant.parse(instant)), ZoneOffset.UTC);
    }

    /** Moves the clock, and every clock made from it by {@link #withZone}, forward; a negative duration moves back. */
    public void move(Duration duration) {
        now.updateAndGet(instant -> instant.plus(duration));
    }

    /** Sets the clock, and every clock made from it by {@link #withZone}. */
    public void set(Instant instant) {
        now.set(instant);
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public SetClock withZone(ZoneId other) {
        return new SetClock(now, other);
    }

    @Override
    public Instant instant() {
        return now.get();
    }
}
