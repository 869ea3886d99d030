package etamine.storage.sql.internal;

import java.math.BigInteger;
import java.time.Instant;

/** Instants as the database keeps them: nanoseconds since 1970, which sort and compare as they should. */
final class Moments {
    private static final long NANOS = 1_000_000_000L;

    private Moments() {}

    /** The number of an instant; one beyond the years 1678 to 2262 counts as the limit. */
    static long toNumber(Instant instant) {
        BigInteger nanos = BigInteger.valueOf(instant.getEpochSecond())
                .multiply(BigInteger.valueOf(NANOS))
                .add(BigInteger.valueOf(instant.getNano()));
        if (nanos.bitLength() < Long.SIZE) {
            return nanos.longValue();
        }
        return nanos.signum() < 0 ? Long.MIN_VALUE : Long.MAX_VALUE;
    }

    static Instant toInstant(long number) {
        return Instant.ofEpochSecond(Math.floorDiv(number, NANOS), Math.floorMod(number, NANOS));
    }
}
