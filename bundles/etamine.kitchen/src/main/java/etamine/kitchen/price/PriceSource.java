package etamine.kitchen.price;

import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/** Knows prices of some items. Lower ranks are asked first. Thread-safe and cheap to ask. */
@ConsumerType
public interface PriceSource {

    /** Stable name: {@code offer}, {@code last-paid}, {@code average}, {@code written}. */
    String id();

    /** The name for people. */
    String label();

    /** Its place among the sources: current offer 10, last paid 20, running average 30, written price 40. */
    int rank();

    /** The price it would give now; empty when it knows none. */
    Optional<PriceQuote> quote(String item);
}
